#include "answer.h"

#include <utility>
#include <vector>

#include "drive_reader.h"
#include "drive_writer.h"
#include "fields.h"
#include "json_writer.h"
#include "link_reader.h"
#include "link_writer.h"
#include "note_writer.h"
#include "plan.h"
#include "plan_writer.h"
#include "problems.h"
#include "request_reader.h"

namespace twinround {
namespace {

void open_envelope(JsonWriter& json, bool ok) {
  json.open_object();
  json.key("ok").yes_no(ok);
  json.key("version").whole(kVersion);
  json.key("rules").whole(kRules);
}

std::string refused(const std::vector<Problem>& problems) {
  JsonWriter json;
  open_envelope(json, false);
  json.key("problems");
  write_problems(json, problems);
  json.close_object();
  return json.written();
}

std::string answer_plan(std::string_view text) {
  const Result<PlanRequest> request = read_request(text);
  if (!request.ok()) return refused(request.problems());
  const Result<Plan> plan = make_plan(request.value());
  if (!plan.ok()) return refused(plan.problems());

  JsonWriter json;
  open_envelope(json, true);
  json.key("plan");
  write_plan(json, plan.value());
  json.close_object();
  // Within the request's ranges no figure comes near that; if one did, half a plan would be a lie.
  if (!json.all_finite()) return refused({figure_too_large()});
  return json.written();
}

// A link just made is opened again for the reply, so that this tells what the link itself says.
std::string answer_link(std::string_view text) {
  LinkRequest asked = read_link_request(text);
  if (!asked.problems.empty()) return refused(asked.problems);
  const std::string link = asked.is_opening ? asked.text : write_link(std::move(asked.sheet));
  LinkSheet sheet;
  const LinkFault fault = read_link(link, sheet);
  if (fault != LinkFault::none) return refused({link_problem(fault)});

  JsonWriter json;
  open_envelope(json, true);
  json.key("link");
  write_link_reply(json, link, sheet, asked.changed);
  json.close_object();
  return json.written();
}

std::string answer_drive(std::string_view text) {
  const Result<DriveRequest> request = read_drive_request(text);
  if (!request.ok()) return refused(request.problems());
  const Result<Drive> drive = plan_drive(request.value());
  if (!drive.ok()) return refused(drive.problems());

  JsonWriter json;
  open_envelope(json, true);
  json.key("drive");
  write_drive(json, drive.value());
  json.close_object();
  if (!json.all_finite()) return refused({figure_too_large()});
  return json.written();
}

}  // namespace

std::string answer(std::string_view question, std::string_view text) {
  if (question == "plan") return answer_plan(text);
  if (question == "link") return answer_link(text);
  if (question == "drive") return answer_drive(text);
  return refused({unknown_question()});
}

}  // namespace twinround

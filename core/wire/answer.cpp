#include "answer.h"

#include <vector>

#include "fields.h"
#include "json_writer.h"
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

}  // namespace

std::string answer(std::string_view question, std::string_view text) {
  if (question != "plan") return refused({unknown_question()});
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

}  // namespace twinround

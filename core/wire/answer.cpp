#include "answer.h"

#include <utility>
#include <vector>

#include "adjust_reader.h"
#include "adjust_writer.h"
#include "drive_reader.h"
#include "drive_writer.h"
#include "envelope.h"
#include "found_question.h"
#include "link_reader.h"
#include "link_writer.h"
#include "odd_question.h"
#include "place_question.h"
#include "plan.h"
#include "plan_writer.h"
#include "problems.h"
#include "request_reader.h"
#include "roster_question.h"
#include "stripes_answer.h"
#include "supply_question.h"
#include "weeks_question.h"

namespace twinround {
namespace {

std::string answer_plan(std::string_view text) {
  const Result<PlanRequest> request = read_request(text);
  if (!request.ok()) return refused(request.problems());
  const Result<Plan> plan = make_plan(request.value());
  if (!plan.ok()) return refused(plan.problems());

  return answered("plan", [&](JsonWriter& json) { write_plan(json, plan.value()); });
}

// A link just made is opened again for the reply, so that this tells what the link itself says.
std::string answer_link(std::string_view text) {
  LinkRequest asked = read_link_request(text);
  if (!asked.problems.empty()) return refused(asked.problems);
  const std::string link = asked.is_opening ? asked.text : write_link(std::move(asked.sheet));
  LinkSheet sheet;
  const LinkFault fault = read_link(link, sheet);
  if (fault != LinkFault::none) return refused({link_problem(fault)});

  return answered("link",
                  [&](JsonWriter& json) { write_link_reply(json, link, sheet, asked.changed); });
}

std::string answer_adjust(std::string_view text) {
  const Result<AdjustQuestion> question = read_adjust_request(text);
  if (!question.ok()) return refused(question.problems());
  const Result<Adjustment> adjustment = adjust(question.value().request);
  if (!adjustment.ok()) return refused(adjustment.problems());
  return answered("adjust", [&](JsonWriter& json) {
    write_adjustment(json, question.value(), adjustment.value());
  });
}

std::string answer_drive(std::string_view text) {
  const Result<DriveRequest> request = read_drive_request(text);
  if (!request.ok()) return refused(request.problems());
  const Result<Drive> drive = plan_drive(request.value());
  if (!drive.ok()) return refused(drive.problems());

  return answered("drive", [&](JsonWriter& json) { write_drive(json, drive.value()); });
}

}  // namespace

std::string answer(std::string_view question, std::string_view text) {
  if (question == "plan") return answer_plan(text);
  if (question == "link") return answer_link(text);
  if (question == "place") return answer_place(text);
  if (question == "found") return answer_found(text);
  if (question == "adjust") return answer_adjust(text);
  if (question == "stripes") return answer_stripes(text);
  if (question == "supply") return answer_supply(text);
  if (question == "weeks") return answer_weeks(text);
  if (question == "roster") return answer_roster(text);
  if (question == "odd") return answer_odd(text);
  if (question == "drive") return answer_drive(text);
  return refused({unknown_question()});
}

}  // namespace twinround

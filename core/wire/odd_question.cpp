#include "odd_question.h"

#include "envelope.h"
#include "note_writer.h"
#include "request_check.h"
#include "request_reader.h"
#include "seat_fields.h"

namespace twinround {
namespace {

constexpr Field kReply[] = {
    {.pointer = "", .about = "What is odd about one pair"},
    {.pointer = "/oddities", .about = "In order of harm", .kind = Kind::list, .need = Need::always},
    {.pointer = "/oddities/*", .kind = Kind::named, .words = "oddity"},
};

}  // namespace

std::span<const Field> odd_reply_fields() {
  return kReply;
}

void write_oddities(JsonWriter& json, const std::vector<Oddity>& odd) {
  json.open_list();
  for (const Oddity& one : odd) {
    json.open_object();
    json.key("harm").text(kHarmWords[static_cast<std::size_t>(one.harm)]);
    write_note_members(json, one.what);
    json.close_object();
  }
  json.close_list();
}

std::string answer_odd(std::string_view text) {
  const std::vector<Field> table = seat_fields();
  const ReadText read = read_json(text, table);
  const std::vector<Problem> problems = check_fields(read, table);
  if (!problems.empty()) return refused(problems);
  const PlanRequest request = plan_request_in(read);
  const Result<Plan> plan = make_plan(request);
  if (!plan.ok()) return refused(plan.problems());

  return answered("odd", [&](JsonWriter& json) {
    json.open_object();
    json.key("oddities");
    write_oddities(json, oddities(request, plan.value(), in_hand(read)));
    json.close_object();
  });
}

}  // namespace twinround

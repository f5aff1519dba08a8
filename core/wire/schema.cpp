#include "schema.h"

#include <span>
#include <string_view>
#include <vector>

#include "adjust_fields.h"
#include "caution_codes.h"
#include "field_schema.h"
#include "found_fields.h"
#include "json_indent.h"
#include "json_writer.h"
#include "link_fields.h"
#include "link_problems.h"
#include "place_question.h"
#include "problem_codes.h"
#include "reply_fields.h"
#include "request_schema.h"
#include "schema_parts.h"
#include "stripes_fields.h"
#include "working_codes.h"

namespace twinround {
namespace {

void write_working(JsonWriter& json) {
  open_definition(json, "working", "How a figure came about", "object");
  json.key("properties").open_object();
  write_enum(json, "figure", "The figure explained", kWorkingFigures);
  write_enum(json, "rule", "The rule it came by", kWorkingRules);
  open_definition(json, "numbers", "The numbers put in, and what came out", "object");
  json.key("additionalProperties").open_object();
  json.key("type").text("number");
  json.close_object();
  json.close_object();
  write_enum(json, "source", "Where the rule is from", kWorkingSources);
  json.close_object();
  write_required(json, {"figure", "rule", "numbers", "source"});
  json.key("additionalProperties").yes_no(false);
  json.close_object();
}

// ["k", 2]
void write_run(JsonWriter& json) {
  constexpr std::string_view kWork[] = {"k", "p", "m1l", "m1r", "m1p"};
  open_definition(json, "run", "What is worked, and how many times", "array");
  json.key("prefixItems").open_list();
  json.open_object();
  json.key("type").text("string");
  write_list_of_words(json, "enum", kWork);
  json.close_object();
  json.open_object();
  json.key("type").text("integer");
  json.key("minimum").whole(1);
  json.close_object();
  json.close_list();
  json.key("items").yes_no(false);
  json.key("minItems").whole(2);
  json.close_object();
}

// What is asked of a sock that is being knit.
void write_making_questions(JsonWriter& json) {
  json.key("placeRequest");
  write_field_schema(json, place_request_fields(), nullptr);
  write_answer(json, "place", "Where a pair in the making stands", place_reply_fields(),
               {"No place, and why", "Something wrong with a sock in the making",
                joined(kProblemCodes, kPlaceCodes)});
  json.key("foundRequest");
  write_field_schema(json, found_request_fields(), nullptr);
  write_answer(
      json, "found", "The round found again", found_reply_fields(),
      {"Not found, and why", "Something that cannot be seen", joined(kProblemCodes, kFoundCodes)});
  json.key("adjustRequest");
  write_adjust_request_schema(json);
  write_answer(json, "adjust", "What the sock on the needles comes to", adjust_reply_fields(),
               {"No way to go on, and why", "Something wrong with what was measured or planned",
                joined(kProblemCodes, kAdjustCodes)});
  json.key("stripesRequest");
  write_stripes_request_schema(json);
  write_answer(json, "stripes", "Stripes or leftovers on a pair", stripes_reply_fields(),
               {"None, and why", "Something wrong with the stripes asked for",
                joined(kProblemCodes, kStripesCodes)});
  json.key("band");
  write_field_schema(json, band_fields(), nullptr);
}

}  // namespace

std::string schema_text() {
  JsonWriter json;
  json.open_object();
  json.key("$schema").text("https://json-schema.org/draft/2020-12/schema");
  json.key("title").text("Requests of the core's questions, and the replies to them");
  json.key("$defs").open_object();
  json.key("request");
  write_request_schema(json);
  write_reply(json, "reply", "answered", "refused");
  write_envelope(json, "answered", "A plan", "plan");
  write_envelope(json, "refused", "No plan, and why", "problems", "problem");
  json.key("plan");
  write_field_schema(json, plan_fields(), nullptr);
  write_run(json);
  write_note(json, "problem", "Something wrong with the request", kProblemCodes);
  write_note(json, "caution", "Something that must not go unsaid about a plan", kCautionCodes);
  write_working(json);
  write_making_questions(json);
  json.key("linkRequest");
  write_field_schema(json, link_request_fields(), nullptr);
  write_answer(json, "link", "A link, made or opened", link_reply_fields(),
               {"No link, and why", "Something wrong with a link or its request",
                joined(kFaultCodes, kLinkRequestCodes)});
  json.close_object();
  json.close_object();
  return indent_json(json.written());
}

}  // namespace twinround

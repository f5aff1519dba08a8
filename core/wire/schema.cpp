#include "schema.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "adjust_fields.h"
#include "caution_codes.h"
#include "field_schema.h"
#include "json_indent.h"
#include "json_writer.h"
#include "line_writer.h"
#include "link_fields.h"
#include "link_problems.h"
#include "odd_question.h"
#include "problem_codes.h"
#include "reply_fields.h"
#include "request_schema.h"
#include "roster_question.h"
#include "schema_parts.h"
#include "seat_fields.h"
#include "supply_question.h"
#include "weeks_question.h"
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

// What a cell changes in the class's request: values by pointer.
void write_changes(JsonWriter& json) {
  open_definition(json, "changes", "Values by RFC 6901 pointer into a request of `plan`", "object");
  json.key("additionalProperties").open_object();
  json.key("type").open_list();
  for (const char* type : {"number", "string", "boolean"}) json.text(type);
  json.close_list();
  json.close_object();
  json.close_object();
}

// A question that is refused as a plan is; its request stands under NAMERequest already.
void write_answer(JsonWriter& json, const std::string& name, const char* about,
                  std::span<const Field> reply) {
  const std::string answered = name + "Answered";
  write_reply(json, (name + "Reply").c_str(), answered.c_str(), "refused");
  write_envelope(json, answered.c_str(), about, name.c_str());
  json.key(name);
  write_field_schema(json, reply, nullptr);
}

void write_parts_and_lines(JsonWriter& json) {
  json.key("planPart");
  write_part_schema(json, request_fields());
  json.key("seatPart");
  write_part_schema(json, seat_fields());
  json.key("pairLine");
  write_field_schema(json, line_fields(), nullptr);
  json.key("knitterWeeks");
  write_field_schema(json, knitter_weeks_fields(), nullptr);
  write_changes(json);
  write_note(json, "oddity", "What is odd about a pair", joined(kCautionCodes, kOddCodes),
             kHarmWords);
}

void write_courses(JsonWriter& json) {
  write_parts_and_lines(json);
  json.key("supplyRequest");
  write_field_schema(json, supply_request_fields(), nullptr);
  write_answer(json, "supply", "One pair for every yarn by every size", supply_reply_fields());
  json.key("weeksRequest");
  write_field_schema(json, weeks_request_fields(), nullptr);
  write_answer(json, "weeks", "How far each pair comes in each meeting", weeks_reply_fields());
  json.key("rosterRequest");
  write_field_schema(json, roster_request_fields(), nullptr);
  write_answer(json, "roster", "A class seat by seat", roster_reply_fields());
  json.key("oddRequest");
  write_request_schema(json, seat_fields());
  write_answer(json, "odd", "What is odd about one pair", odd_reply_fields());
}

}  // namespace

std::string schema_text() {
  JsonWriter json;
  json.open_object();
  json.key("$schema").text("https://json-schema.org/draft/2020-12/schema");
  json.key("title").text("Requests of the core's questions, and the replies to them");
  json.key("$defs").open_object();
  json.key("request");
  write_request_schema(json, request_fields());
  write_reply(json, "reply", "answered", "refused");
  write_envelope(json, "answered", "A plan", "plan");
  write_envelope(json, "refused", "No plan, and why", "problems", "problem");
  json.key("plan");
  write_field_schema(json, plan_fields(), nullptr);
  write_run(json);
  write_note(json, "problem", "Something wrong with the request", kProblemCodes);
  write_note(json, "caution", "Something that must not go unsaid about a plan", kCautionCodes);
  write_working(json);
  json.key("adjustRequest");
  write_request_schema(json, adjust_request_fields());
  write_reply(json, "adjustReply", "adjustAnswered", "adjustRefused");
  write_envelope(json, "adjustAnswered", "What the sock on the needles comes to", "adjust");
  write_envelope(json, "adjustRefused", "No way to go on, and why", "problems", "adjustProblem");
  json.key("adjust");
  write_field_schema(json, adjust_reply_fields(), nullptr);
  write_note(json, "adjustProblem", "Something wrong with what was measured or planned",
             joined(kProblemCodes, kAdjustCodes));
  write_courses(json);
  json.key("linkRequest");
  write_field_schema(json, link_request_fields(), nullptr);
  write_reply(json, "linkReply", "linkAnswered", "linkRefused");
  write_envelope(json, "linkAnswered", "A link, made or opened", "link");
  write_envelope(json, "linkRefused", "No link, and why", "problems", "linkProblem");
  json.key("link");
  write_field_schema(json, link_reply_fields(), nullptr);
  write_note(json, "linkProblem", "Something wrong with a link or its request",
             joined(kFaultCodes, kLinkRequestCodes));
  json.close_object();
  json.close_object();
  return indent_json(json.written());
}

}  // namespace twinround

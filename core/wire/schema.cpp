#include "schema.h"

#include <span>
#include <string>
#include <string_view>

#include "caution_codes.h"
#include "field_schema.h"
#include "json_indent.h"
#include "json_writer.h"
#include "link_fields.h"
#include "link_problems.h"
#include "problem_codes.h"
#include "reply_fields.h"
#include "request_schema.h"
#include "schema_parts.h"
#include "schema_questions.h"
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
  write_making_schema(json);
  write_class_schema(json);
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

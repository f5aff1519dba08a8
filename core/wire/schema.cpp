#include "schema.h"

#include <span>
#include <string_view>
#include <vector>

#include "caution_codes.h"
#include "drive_fields.h"
#include "field_schema.h"
#include "json_indent.h"
#include "json_writer.h"
#include "link_fields.h"
#include "link_problems.h"
#include "problem_codes.h"
#include "reply_fields.h"
#include "request_schema.h"
#include "working_codes.h"

namespace twinround {
namespace {

using Words = std::span<const std::string_view>;

void open_definition(JsonWriter& json, const char* name, const char* about, const char* type) {
  json.key(name).open_object();
  json.key("description").text(about);
  json.key("type").text(type);
}

void write_list_of_words(JsonWriter& json, const char* key, Words words) {
  json.key(key).open_list();
  for (const std::string_view word : words) json.text(word);
  json.close_list();
}

void write_required(JsonWriter& json, std::initializer_list<std::string_view> names) {
  write_list_of_words(json, "required", Words(names.begin(), names.size()));
}

void write_enum(JsonWriter& json, const char* name, const char* about, Words words) {
  open_definition(json, name, about, "string");
  write_list_of_words(json, "enum", words);
  json.close_object();
}

void write_text(JsonWriter& json, const char* name, const char* about) {
  open_definition(json, name, about, "string");
  json.close_object();
}

void write_reference(JsonWriter& json, const char* name) {
  json.open_object();
  json.key("$ref").text(std::string("#/$defs/") + name);
  json.close_object();
}

// Problems and cautions: the numbers and words that go with a code stand flat beside it.
void write_note(JsonWriter& json, const char* name, const char* about, Words codes) {
  open_definition(json, name, about, "object");
  json.key("properties").open_object();
  write_text(json, "field", "RFC 6901 pointer into the request; \"\" is the whole of it");
  write_enum(json, "code", "What it is", codes);
  write_text(json, "message", "A plain English sentence in SI units");
  json.close_object();
  write_required(json, {"field", "code", "message"});
  json.key("additionalProperties").open_object();
  json.key("description")
      .text("A number or a word that goes with the code; lengths are named ...Mm");
  json.key("type").open_list();
  json.text("number");
  json.text("string");
  json.close_list();
  json.close_object();
  json.close_object();
}

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

// `part` is what the envelope holds, the problems of kind `problem` where the question was refused.
void write_envelope(JsonWriter& json, const char* name, const char* about, const char* part,
                    const char* problem = nullptr) {
  const bool ok = problem == nullptr;
  open_definition(json, name, about, "object");
  json.key("properties").open_object();
  open_definition(json, "ok", "Whether the question was answered", "boolean");
  json.key("const").yes_no(ok);
  json.close_object();
  open_definition(json, "version", "Version of this contract", "integer");
  json.key("const").whole(kVersion);
  json.close_object();
  open_definition(json, "rules", "Raised with every change of a default, a constant or a rule",
                  "integer");
  json.key("minimum").whole(1);
  json.close_object();
  if (ok) {
    json.key(part);
    write_reference(json, part);
  } else {
    open_definition(json, part, "Everything that is wrong, at once", "array");
    json.key("minItems").whole(1);
    json.key("items");
    write_reference(json, problem);
    json.close_object();
  }
  json.close_object();
  write_required(json, {"ok", "version", "rules", part});
  json.key("additionalProperties").yes_no(false);
  json.close_object();
}

void write_reply(JsonWriter& json, const char* name, const char* answered, const char* refused) {
  json.key(name).open_object();
  json.key("oneOf").open_list();
  write_reference(json, answered);
  write_reference(json, refused);
  json.close_list();
  json.close_object();
}

}  // namespace

std::string schema_text() {
  JsonWriter json;
  json.open_object();
  json.key("$schema").text("https://json-schema.org/draft/2020-12/schema");
  json.key("title").text("Requests of `plan`, `drive` and `link`, and the replies to them");
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
  json.key("driveRequest");
  write_drive_request_schema(json);
  write_reply(json, "driveReply", "driveAnswered", "driveRefused");
  write_envelope(json, "driveAnswered", "Sizes for many feet", "drive");
  write_envelope(json, "driveRefused", "No sizes, and why", "problems", "driveProblem");
  json.key("drive");
  write_field_schema(json, drive_reply_fields(), nullptr);
  std::vector<std::string_view> drive_codes(std::begin(kProblemCodes), std::end(kProblemCodes));
  drive_codes.insert(drive_codes.end(), std::begin(kDriveCodes), std::end(kDriveCodes));
  write_note(json, "driveProblem", "Something wrong with the request for many feet", drive_codes);
  write_note(json, "driveCaution", "Something that must not go unsaid about many feet",
             kDriveCautionCodes);
  json.key("linkRequest");
  write_field_schema(json, link_request_fields(), nullptr);
  write_reply(json, "linkReply", "linkAnswered", "linkRefused");
  write_envelope(json, "linkAnswered", "A link, made or opened", "link");
  write_envelope(json, "linkRefused", "No link, and why", "problems", "linkProblem");
  json.key("link");
  write_field_schema(json, link_reply_fields(), nullptr);
  std::vector<std::string_view> codes(std::begin(kFaultCodes), std::end(kFaultCodes));
  codes.insert(codes.end(), std::begin(kLinkRequestCodes), std::end(kLinkRequestCodes));
  write_note(json, "linkProblem", "Something wrong with a link or its request", codes);
  json.close_object();
  json.close_object();
  return indent_json(json.written());
}

}  // namespace twinround

#include "schema_parts.h"

#include "field_schema.h"

namespace twinround {

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

namespace {

void write_text(JsonWriter& json, const char* name, const char* about) {
  open_definition(json, name, about, "string");
  json.close_object();
}

void write_reference(JsonWriter& json, const char* name) {
  json.open_object();
  json.key("$ref").text(std::string("#/$defs/") + name);
  json.close_object();
}

}  // namespace

void write_note(JsonWriter& json, const char* name, const char* about, Words codes, Words harms) {
  open_definition(json, name, about, "object");
  json.key("properties").open_object();
  if (!harms.empty()) write_enum(json, "harm", "What it does, the worst first", harms);
  write_text(json, "field", "RFC 6901 pointer into the request; \"\" is the whole of it");
  write_enum(json, "code", "What it is", codes);
  write_text(json, "message", "A plain English sentence in SI units");
  json.close_object();
  if (harms.empty()) write_required(json, {"field", "code", "message"});
  if (!harms.empty()) write_required(json, {"harm", "field", "code", "message"});
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

void write_envelope(JsonWriter& json, const char* name, const char* about, const char* part,
                    const char* problem) {
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

void write_answer(JsonWriter& json, const std::string& name, const char* about,
                  std::span<const Field> reply, const Refusal& refusal) {
  const bool is_own = !refusal.codes.empty();
  const std::string answered = name + "Answered";
  const std::string refused = is_own ? name + "Refused" : "refused";
  const std::string problem = name + "Problem";
  write_reply(json, (name + "Reply").c_str(), answered.c_str(), refused.c_str());
  write_envelope(json, answered.c_str(), about, name.c_str());
  if (is_own) {
    write_envelope(json, refused.c_str(), refusal.about, "problems", problem.c_str());
  }
  json.key(name);
  write_field_schema(json, reply, nullptr);
  if (is_own) write_note(json, problem.c_str(), refusal.about_problem, refusal.codes);
}

std::vector<std::string_view> joined(Words some, Words more) {
  std::vector<std::string_view> all(some.begin(), some.end());
  all.insert(all.end(), more.begin(), more.end());
  return all;
}

}  // namespace twinround

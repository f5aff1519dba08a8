#include "request_schema.h"

#include <initializer_list>
#include <string_view>
#include <vector>

#include "field_schema.h"
#include "fields.h"
#include "stripes_fields.h"

namespace twinround {
namespace {

using Names = std::initializer_list<std::string_view>;

void write_required(JsonWriter& json, Names names) {
  json.key("required").open_list();
  for (const std::string_view name : names) json.text(name);
  json.close_list();
}

// {"required": [...]}
void write_requiring(JsonWriter& json, Names names) {
  json.open_object();
  write_required(json, names);
  json.close_object();
}

void write_swatch_or_category(JsonWriter& json) {
  json.key("anyOf").open_list();
  write_requiring(json, {"swatch"});
  json.open_object();
  write_required(json, {"yarn"});
  json.key("properties").open_object();
  json.key("yarn");
  write_requiring(json, {"category"});
  json.close_object();
  json.close_object();
  json.close_list();
}

void write_measured_or_shoe(JsonWriter& json) {
  json.key("anyOf").open_list();
  write_requiring(json, {"lengthMm", "ballGirthMm"});
  write_requiring(json, {"shoe", "body"});
  json.close_list();
}

// {"properties": {"size": {"maximum": 60}}}
void write_size_bound(JsonWriter& json, const char* keyword, double bound) {
  json.open_object();
  json.key("properties").open_object();
  json.key("size").open_object();
  json.key(keyword).real(bound);
  json.close_object();
  json.close_object();
  json.close_object();
}

void write_size_of_scale(JsonWriter& json) {
  json.key("if").open_object();
  json.key("properties").open_object();
  json.key("scale").open_object();
  json.key("const").text(kMondopoint);
  json.close_object();
  json.close_object();
  json.close_object();
  json.key("then");
  write_size_bound(json, "minimum", kMondopointSizes.min);
  json.key("else");
  write_size_bound(json, "maximum", kOtherSizes.max);
}

// {"if": {"properties": {"who": {"const": "child"}}}, "then": {"required": ["ageYears"]}}
void write_age_of_children(JsonWriter& json) {
  json.key("if").open_object();
  json.key("properties").open_object();
  json.key("who").open_object();
  json.key("const").text("child");
  json.close_object();
  json.close_object();
  json.close_object();
  json.key("then");
  write_requiring(json, {"ageYears"});
}

void write_any_of(JsonWriter& json, Names names) {
  json.key("anyOf").open_list();
  for (const std::string_view name : names) write_requiring(json, {name});
  json.close_list();
}

// Of both questions that hold lots of yarn.
void write_some_yarn(JsonWriter& json) {
  write_any_of(json, {"m", "g"});
}

// What request_check asks of several fields together, inside a member of the request.
void write_rules_of_members(JsonWriter& json, const Field& field) {
  if (field.pointer == "/foot") write_measured_or_shoe(json);
  if (field.pointer == "/foot/shoe") write_size_of_scale(json);
  if (field.pointer == "/drive/groups/*") write_age_of_children(json);
  if (field.pointer == "/drive/lots/*") write_some_yarn(json);
  if (field.pointer == "/swatch/readings") {
    json.key("contains");
    write_requiring(json, {"rounds", "heightMm"});
  }
}

void write_stripes_rules(JsonWriter& json, const Field& field) {
  if (field.pointer.empty()) write_any_of(json, {"repeat", "own", "leftovers"});
  if (field.pointer == "/leftovers/lots/*") write_some_yarn(json);
}

void write_rules(JsonWriter& json, const Field& field) {
  if (field.pointer.empty()) write_swatch_or_category(json);
  write_rules_of_members(json, field);
}

}  // namespace

void write_request_schema(JsonWriter& json, std::span<const Field> table) {
  write_field_schema(json, table, &write_rules);
}

void write_part_schema(JsonWriter& json, std::span<const Field> table) {
  std::vector<Field> part(table.begin(), table.end());
  for (Field& field : part) {
    if (parent_pointer(field.pointer).empty()) field.need = Need::optional;
  }
  write_field_schema(json, part, &write_rules_of_members);
}

void write_stripes_request_schema(JsonWriter& json) {
  write_field_schema(json, stripes_request_fields(), &write_stripes_rules);
}

}  // namespace twinround

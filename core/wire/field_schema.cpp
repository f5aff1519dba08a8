#include "field_schema.h"

#include <string>
#include <vector>

namespace twinround {
namespace {

class SchemaWriter {
 public:
  SchemaWriter(JsonWriter& json, std::span<const Field> table, SchemaRules rules)
      : json_(json), table_(table), rules_(rules) {}

  void write(const Field& field);

 private:
  std::vector<const Field*> inside(const Field& around) const;
  void write_description(const Field& field);
  void write_object(const Field& field);
  void write_required(const std::vector<const Field*>& fields);
  void write_partners(const std::vector<const Field*>& fields);
  void write_list(const Field& field);
  void write_number(const Field& field, const char* type);
  void write_word(const Field& field);

  JsonWriter& json_;
  std::span<const Field> table_;
  SchemaRules rules_;
};

std::vector<const Field*> SchemaWriter::inside(const Field& around) const {
  std::vector<const Field*> found;
  for (const Field& field : table_) {
    if (!field.pointer.empty() && parent_pointer(field.pointer) == around.pointer) {
      found.push_back(&field);
    }
  }
  return found;
}

void SchemaWriter::write_description(const Field& field) {
  std::string extra(field.unit);
  if (field.step > 0 && field.kind != Kind::whole) {
    extra += (extra.empty() ? "in steps of " : ", in steps of ") + json_number(field.step);
  }
  const std::string about(field.about);
  json_.key("description").text(extra.empty() ? about : about + " (" + extra + ")");
}

void SchemaWriter::write_required(const std::vector<const Field*>& fields) {
  json_.key("required").open_list();
  for (const Field* field : fields) {
    if (field->need == Need::always) json_.text(field_name(field->pointer));
  }
  json_.close_list();
}

void SchemaWriter::write_partners(const std::vector<const Field*>& fields) {
  bool any = false;
  for (const Field* field : fields) any = any || !field->partner.empty();
  if (!any) return;
  json_.key("dependentRequired").open_object();
  for (const Field* field : fields) {
    if (field->partner.empty()) continue;
    json_.key(field_name(field->pointer)).open_list();
    json_.text(field->partner);
    json_.close_list();
  }
  json_.close_object();
}

void SchemaWriter::write_object(const Field& field) {
  const std::vector<const Field*> fields = inside(field);
  json_.key("type").text("object");
  json_.key("properties").open_object();
  for (const Field* inner : fields) {
    json_.key(field_name(inner->pointer));
    write(*inner);
  }
  json_.close_object();
  write_required(fields);
  write_partners(fields);
  json_.key("additionalProperties").yes_no(false);
}

void SchemaWriter::write_list(const Field& field) {
  json_.key("type").text("array");
  if (field.min > 0) json_.key("minItems").real(field.min);
  if (field.max > 0) json_.key("maxItems").real(field.max);
  json_.key("items");
  write(*inside(field).front());
}

void SchemaWriter::write_number(const Field& field, const char* type) {
  json_.key("type").text(type);
  // Where one value alone is allowed it is said as such; the figures of a reply (no step) have no
  // range.
  if (field.max > field.min) {
    json_.key("minimum").real(field.min);
    json_.key("maximum").real(field.max);
  } else if (field.step > 0) {
    json_.key("const").real(field.min);
  }
  if (!field.standard.empty()) json_.key("default").literal(field.standard);
}

void SchemaWriter::write_word(const Field& field) {
  json_.key("type").text("string");
  json_.key("enum").open_list();
  for (int place = 0; !word_at(field.words, place).empty(); ++place) {
    json_.text(word_at(field.words, place));
  }
  json_.close_list();
  if (!field.standard.empty()) json_.key("default").text(field.standard);
}

void SchemaWriter::write(const Field& field) {
  json_.open_object();
  if (field.kind == Kind::named) {
    json_.key("$ref").text("#/$defs/" + std::string(field.words));
    return json_.close_object();
  }
  write_description(field);
  switch (field.kind) {
    case Kind::object:
      write_object(field);
      break;
    case Kind::list:
      write_list(field);
      break;
    case Kind::number:
      write_number(field, "number");
      break;
    case Kind::whole:
      write_number(field, "integer");
      break;
    case Kind::yes_no:
      json_.key("type").text("boolean");
      if (!field.standard.empty()) json_.key("default").literal(field.standard);
      break;
    case Kind::word:
      write_word(field);
      break;
    case Kind::text:
      json_.key("type").text("string");
      break;
    case Kind::named:
      break;
  }
  if (rules_) rules_(json_, field);
  json_.close_object();
}

}  // namespace

void write_field_schema(JsonWriter& json, std::span<const Field> table, SchemaRules rules) {
  SchemaWriter(json, table, rules).write(table.front());
}

}  // namespace twinround

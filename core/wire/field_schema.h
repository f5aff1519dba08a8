// A table of fields as JSON Schema.
#pragma once

#include <span>

#include "fields.h"
#include "json_writer.h"

namespace twinround {

// What a row's own columns cannot say: writes further keywords into the schema of that field.
using SchemaRules = void (*)(JsonWriter& json, const Field& field);

// Writes the schema of the table's whole text. Precondition: the table's first row is that of "".
void write_field_schema(JsonWriter& json, std::span<const Field> table, SchemaRules rules);

}  // namespace twinround

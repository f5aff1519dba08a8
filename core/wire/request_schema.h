// The request of `plan`, those that hold it, and that of `stripes` as JSON Schema.
#pragma once

#include <span>

#include "fields.h"
#include "json_writer.h"

namespace twinround {

// Refuses by shape what request_check refuses by shape; what only the text shows (repeated keys,
// its size, NaN) and what only the computation shows is beyond a schema.
// `table` is that of `plan`, or that and more.
void write_request_schema(JsonWriter& json, std::span<const Field> table);
// A part of it, which need not be whole at its top.
void write_part_schema(JsonWriter& json, std::span<const Field> table);
// The request of `stripes`.
void write_stripes_request_schema(JsonWriter& json);

}  // namespace twinround

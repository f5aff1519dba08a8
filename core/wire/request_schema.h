// The requests of `plan` and `drive` as JSON Schema.
#pragma once

#include "json_writer.h"

namespace twinround {

// Refuses by shape what request_check refuses by shape; what only the text shows (repeated keys,
// its size, NaN) and what only the computation shows is beyond a schema.
void write_request_schema(JsonWriter& json);
// The same of `drive`.
void write_drive_request_schema(JsonWriter& json);

}  // namespace twinround

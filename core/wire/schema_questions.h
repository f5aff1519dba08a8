// The questions asked beside the plan, each with its request, its reply and their parts. Private to
// the schema.
#pragma once

#include "json_writer.h"

namespace twinround {

// `place`, `found`, `adjust` and `stripes`, of a sock in the making.
void write_making_schema(JsonWriter& json);
// `supply`, `weeks`, `roster` and `odd`, of a class, and `drive`, of many feet.
void write_class_schema(JsonWriter& json);

}  // namespace twinround

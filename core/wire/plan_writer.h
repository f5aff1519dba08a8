// A plan as JSON.
#pragma once

#include "json_writer.h"
#include "plan.h"

namespace twinround {

// The object `plan` of the reply. Reals as computed, never rounded; what does not exist is left
// out.
void write_plan(JsonWriter& json, const Plan& plan);

}  // namespace twinround

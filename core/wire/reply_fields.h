// The figures of a plan as plain data, for the schema. (What is written stands in plan_writer; the
// tests hold the two to each other.)
#pragma once

#include <span>

#include "fields.h"

namespace twinround {

// The object `plan` of a reply, parents before children; `Need::always` for what every plan has.
std::span<const Field> plan_fields();

}  // namespace twinround

// What can be done about a sock on the needles, as JSON.
#pragma once

#include "adjust_reader.h"
#include "json_writer.h"

namespace twinround {

// The object `adjust` of the reply.
void write_adjustment(JsonWriter& json, const AdjustQuestion& question,
                      const Adjustment& adjustment);

}  // namespace twinround

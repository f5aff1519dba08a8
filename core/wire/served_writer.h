// The feet a pair serves, written into a reply.
#pragma once

#include "json_writer.h"
#include "serves.h"

namespace twinround {

// footFromMm, footToMm, sizes.
void write_served(JsonWriter& json, const FeetServed& served);

}  // namespace twinround

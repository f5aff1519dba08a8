// A needle by its names, as JSON.
#pragma once

#include "json_writer.h"
#include "needle.h"

namespace twinround {

// The members mm, us and uk of an object that is open; a name only where the charts have one.
void write_needle_name(JsonWriter& json, const NeedleName& name);

}  // namespace twinround

// Many feet as the object `drive` of a reply.
#pragma once

#include "drive.h"
#include "json_writer.h"

namespace twinround {

void write_drive(JsonWriter& json, const Drive& drive);

}  // namespace twinround

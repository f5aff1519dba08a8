// JSON text to a request of `drive`, or to everything that is wrong with it.
#pragma once

#include <string_view>

#include "drive.h"
#include "result.h"

namespace twinround {

// Takes any bytes.
Result<DriveRequest> read_drive_request(std::string_view text);

}  // namespace twinround

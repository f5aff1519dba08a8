// JSON text to a request of `plan`, or to everything that is wrong with it.
#pragma once

#include <string_view>

#include "plan_request.h"
#include "result.h"

namespace twinround {

// Takes any bytes. Fields left out stand at their defaults.
Result<PlanRequest> read_request(std::string_view text);

}  // namespace twinround

// JSON text to a request of `plan`, or to everything that is wrong with it.
#pragma once

#include <string_view>

#include "json_reader.h"
#include "plan_request.h"
#include "result.h"

namespace twinround {

// Takes any bytes. Fields left out stand at their defaults.
Result<PlanRequest> read_request(std::string_view text);

// The request of `plan` in a text that was read and found good; what else stands in it is left
// alone.
PlanRequest plan_request_in(const ReadText& read);

}  // namespace twinround

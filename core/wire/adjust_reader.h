// JSON text to a request of `adjust`, or to everything that is wrong with it.
#pragma once

#include <optional>
#include <string_view>

#include "adjust.h"
#include "result.h"

namespace twinround {

struct AdjustQuestion {
  AdjustRequest request;
  std::optional<Mass> left_a, left_b;
};

// Takes any bytes.
Result<AdjustQuestion> read_adjust_request(std::string_view text);

}  // namespace twinround

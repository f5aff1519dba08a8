// JSON text to a request of `stripes`, or to everything that is wrong with it.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "leftovers.h"
#include "making.h"
#include "own_stripes.h"
#include "result.h"
#include "stripes.h"

namespace twinround {

struct LeftoversQuestion {
  LeftoversInput input;
  std::vector<std::optional<double>> tex;  // of each lot, where it was told
  std::optional<Length> leg_height;        // with the next
  std::optional<RoundGauge> rounds;
};

struct StripesQuestion {
  SockInMaking sock;
  double tex = 0;
  std::optional<StripesInput> repeat;
  std::vector<RoundStripe> own;  // empty where that was not asked
  std::optional<LeftoversQuestion> leftovers;
};

// Takes any bytes.
Result<StripesQuestion> read_stripes_request(std::string_view text);

}  // namespace twinround

#include "serves.h"

#include <algorithm>

#include "rounding.h"
#include "tube.h"

namespace twinround {

std::optional<FeetServed> feet_served(const ServesInput& input) {
  const double ease = 1.0 + input.length_ease;
  const Length sock = input.foot_length * ease + input.leg_height;
  const Length shortest = (sock * kLeastLengthShare - input.leg_height) / ease;
  const Length longest = (sock * kMostLengthShare - input.leg_height) / ease;

  // Girths over the sock's own: that of the foot planned for, times the foot over that foot.
  const double girth_share = 1.0 / (1.0 + input.girth_ease);
  const double widest = std::min(kMostGirthShare / girth_share, kPassUse / input.worst_use);
  const Length slimmest = input.foot_length * (kLeastGirthShare / girth_share);

  const FeetServed served{std::max(shortest, slimmest),
                          std::min(longest, input.foot_length * widest)};
  const bool is_served = at_least(input.foot_length.mm(), served.from.mm()) &&
                         at_least(served.to.mm(), input.foot_length.mm());
  if (!is_served) return std::nullopt;
  return served;
}

}  // namespace twinround

// Which feet a finished pair serves: what stands on its band when it is given away.
#pragma once

#include <optional>

#include "units.h"

namespace twinround {

// A foot is served while its ball girth is 1.00 to 1.40 times the sock's laid flat, and its way
// from toe to edge 0.95 to 1.20 times the sock's length. ASSUMPTION.
inline constexpr double kLeastGirthShare = 1.00;
inline constexpr double kMostGirthShare = 1.40;
inline constexpr double kLeastLengthShare = 0.95;
inline constexpr double kMostLengthShare = 1.20;

struct ServesInput {
  Length foot_length;  // that the pair was planned for
  Length leg_height;
  double length_ease = 0;
  double girth_ease = 0;  // of the count, as ease_of tells it
  double worst_use = 0;   // of heel and leg: the greater share of the stretch
};

struct FeetServed {
  Length from, to;  // foot lengths
};

// Feet of the same build: their girths keep to the length in the same proportion (ASSUMPTION).
// Absent where the pair does not serve by these limits even the foot it was planned for.
std::optional<FeetServed> feet_served(const ServesInput& input);

}  // namespace twinround

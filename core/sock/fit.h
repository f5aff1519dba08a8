// The girths the tube meets on its way up the leg.
#pragma once

#include <optional>

#include "units.h"

namespace twinround {

// Ankle girth sits at 0.45 and calf girth at 1.38 foot lengths above the floor; linear between,
// level outside. ASSUMPTION.
struct Leg {
  Length foot_length;
  Length ankle_girth;
  Length calf_girth;
};

inline constexpr double kAnkleHeight = 0.45;
inline constexpr double kCalfHeight = 1.38;

Length girth_at(const Leg& leg, Length height);

// The girth up to the edge that uses most of the stretch, and the height from which the tube no
// longer passes, if any.
struct LegFit {
  Length widest_girth;
  Length widest_height;
  double worst_use = 0;
  Length edge_girth;
  std::optional<Length> fails_from;
};

LegFit fit_leg(const Leg& leg, Length edge_height, Stitches n, Length widest_stitch);

}  // namespace twinround

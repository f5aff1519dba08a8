// The needle to knit on and the cable that carries two socks.
#pragma once

#include <optional>

#include "needle.h"
#include "units.h"
#include "yarn_category.h"

namespace twinround {

struct NeedleChoice {
  NeedleName name;
  Length cable_least;
  std::optional<Length> cable_buy;  // the next length sold, never under 1000 mm for two; nothing
                                    // where none is long enough
};

// Two loops of cable and two tips beyond the stitches of both socks. ASSUMPTION.
inline constexpr Length kCableLoop = Length::from_mm(80);
inline constexpr Length kNeedleTip = Length::from_mm(120);

// `swatch_needle` is the swatch's own; without it the low end of the category's range.
// Cable: both socks' fronts and backs lie flat, 4 n/(2 g_s), plus loops and tips.
NeedleChoice choose_needle(std::optional<Length> swatch_needle, const YarnCategory& category,
                           Stitches n, StitchGauge gauge);

}  // namespace twinround

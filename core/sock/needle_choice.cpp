#include "needle_choice.h"

#include <algorithm>

namespace twinround {

NeedleChoice choose_needle(std::optional<Length> swatch_needle, const YarnCategory& category,
                           Stitches n, StitchGauge gauge) {
  NeedleChoice choice;
  choice.name = name_needle(swatch_needle.value_or(category.needle_lo));
  choice.cable_least = (n * 4) / gauge / 2.0 + 2.0 * kCableLoop + 2.0 * kNeedleTip;
  choice.cable_buy = next_cable_sold(std::max(choice.cable_least, kLeastCableForTwo));
  return choice;
}

}  // namespace twinround

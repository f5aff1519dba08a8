#include "size_band.h"

#include <algorithm>

#include "rounding.h"

namespace twinround {

std::vector<ShoeBand> shoe_bands(const LengthBand& lengths, bool women, bool men) {
  const struct {
    ShoeScale scale;
    bool is_worn;
  } scales[] = {{ShoeScale::eu, true},
                {ShoeScale::uk, women || men},
                {ShoeScale::us_women, women},
                {ShoeScale::us_men, men}};
  std::vector<ShoeBand> bands;
  for (const auto& [scale, is_worn] : scales) {
    if (!is_worn) continue;
    const ShoeRule rule = shoe_rule(scale);
    const int from = std::max(1, ceil_count(lengths.from / rule.step - rule.offset));
    const int to = floor_count(lengths.to / rule.step - rule.offset);
    if (from <= to) bands.push_back({scale, from, to});
  }
  return bands;
}

}  // namespace twinround

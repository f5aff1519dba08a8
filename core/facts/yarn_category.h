// The trade's yarn weight categories: gauge, needles, thickness, and how far 100 g reaches.
#pragma once

#include <array>
#include <optional>

#include "units.h"

namespace twinround {

// How thick the yarn of a category is, in tex (grams a kilometre). An end the chart leaves open is
// 0 ("and under") or infinite ("and over").
struct ThicknessBand {
  double tex_lo = 0;
  double tex_hi = 0;
};

// One category, gauge in stockinette over 4 in (101.6 mm). Guidelines, by the Council's own word:
// "the most commonly used gauges", so nothing just outside a range is wrong for it.
struct YarnCategory {
  int number = 0;  // 0 lace ... 7 jumbo
  const char* name = "";
  int stitches_lo = 0;  // the loose end of the range; of category 7, ASSUMPTION
  int stitches_hi = 0;  // the dense end: a sock is knit firm or it wears through
  Length needle_lo;
  Length needle_hi;       // the top of the range; of category 7, ASSUMPTION
  double m_per_100g = 0;  // common practice, no source
  // Nothing for category 7: the chart stops at 6.
  std::optional<ThicknessBand> thickness;
};

// All eight, in order of number.
const std::array<YarnCategory, 8>& yarn_categories();

// Nothing for a number outside 0 to 7.
std::optional<YarnCategory> yarn_category(int number);

// The category whose range holds the gauge; between two ranges the nearest one, and of two that
// hold it (or are equally near) the finer. Finer than every range is 0, looser is 7.
YarnCategory yarn_category_for(StitchGauge gauge);

// Relative standard error of a gauge read off the label: the range taken as uniform,
// (hi - lo)/(2 sqrt(3) mid).
double label_error(const YarnCategory& category);

// Standard gauge width: 4 in.
inline constexpr Length kGaugeWidth = Length::from_in(4);

}  // namespace twinround

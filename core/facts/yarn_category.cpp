#include "yarn_category.h"

#include <algorithm>
#include <limits>
#include <numbers>

#include "rounding.h"

namespace twinround {

namespace {

constexpr Length mm(double value) {
  return Length::from_mm(value);
}

constexpr double kOpen = std::numeric_limits<double>::infinity();

constexpr std::optional<ThicknessBand> tex(double lo, double hi) {
  return ThicknessBand{lo, hi};
}

// Gauge and needles: Craft Yarn Council, Standard Yarn Weight System, read for categories 0 to 6,
// second-hand for 7. Credit line: "Source: Craft Yarn Council's www.YarnStandards.com" (worded from
// memory).
//
// Category 7 is published as "6 and under" on "12.75 mm and over"; its open ends are ours.
// 4 stitches, ASSUMPTION: as wide a range, in proportion, as category 6 beside it; 6 x 7/11 = 3.8.
// 25 mm, ASSUMPTION: at 4 stitches over 101.6 mm a stitch is 25.4 mm wide, and in every other row
// the needle is thinner than its stitch is wide.
//
// Metres in 100 g: common practice, no source. Spread: the band of tex beside it. Category 4 lies
// outside of its band: 190 m is thinner than the 181 m at most of the chart (526 tex against 551).
//
// Tex: a spinning magazine's chart of yards a pound by category, read: 2401 and over, 1901-2400,
// 1201-1900, 901-1200, 601-900, 401-600, 400 and under. Derived, to 1 tex: 496 055/(yards a pound).
// clang-format off
constexpr std::array<YarnCategory, 8> kCategories = {{
    // no. name        st over 4 in   needle            m/100 g  tex
    {0, "lace",        33, 40, mm(1.5),   mm(2.25),  550, tex(0, 207)},
    {1, "super fine",  27, 32, mm(2.25),  mm(3.25),  420, tex(207, 261)},
    {2, "fine",        23, 26, mm(3.25),  mm(3.75),  320, tex(261, 413)},
    {3, "light",       21, 24, mm(3.75),  mm(4.5),   240, tex(413, 551)},
    {4, "medium",      16, 20, mm(4.5),   mm(5.5),   190, tex(551, 825)},
    {5, "bulky",       12, 15, mm(5.5),   mm(8),     120, tex(827, 1237)},
    {6, "super bulky",  7, 11, mm(8),     mm(12.75),  80, tex(1240, kOpen)},
    {7, "jumbo",        4,  6, mm(12.75), mm(25),     50, std::nullopt},
}};
// clang-format on

// Stitches over 4 in by which a gauge misses the range; 0 inside it.
double distance_from(const YarnCategory& category, double stitches) {
  return std::max({category.stitches_lo - stitches, stitches - category.stitches_hi, 0.0});
}

}  // namespace

const std::array<YarnCategory, 8>& yarn_categories() {
  return kCategories;
}

std::optional<YarnCategory> yarn_category(int number) {
  for (const YarnCategory& category : kCategories) {
    if (category.number == number) return category;
  }
  return std::nullopt;
}

YarnCategory yarn_category_for(StitchGauge gauge) {
  const double stitches = gauge * kGaugeWidth;
  const YarnCategory* nearest = &kCategories.front();
  // From the finest down: only a clearly nearer range takes over, so a tie stays with the finer.
  for (const YarnCategory& category : kCategories) {
    if (clearly_above(distance_from(*nearest, stitches), distance_from(category, stitches))) {
      nearest = &category;
    }
  }
  return *nearest;
}

double label_error(const YarnCategory& category) {
  const double width = category.stitches_hi - category.stitches_lo;
  const double mid = (category.stitches_hi + category.stitches_lo) / 2.0;
  return width / (2.0 * std::numbers::sqrt3 * mid);
}

}  // namespace twinround

#include "shoe.h"

#include <algorithm>

#include "rounding.h"

namespace twinround {

namespace {

// ISO 9407 and ISO/TS 19407:2015, read: the size IS the foot length in mm. A step of 5 mm, from
// memory.
constexpr Length kMondopointStep = Length::from_mm(5.0);

// European: (size - 2) x 6.67 mm, two thirds of a centimetre a size; read as the values 36 = 226.6,
// 40 = 253.4, 42 = 266.8, 44 = 280.2, which the rule meets within 0.2 mm.
constexpr Length kEuropeanStep = Length::from_mm(6.67);
constexpr double kEuropeanZero = 2.0;

// English and American sizes are thirds of an inch.
constexpr Length kThirdInch = Length::from_in(1.0) / 3.0;

// Brannock scale, read: men (size + 22)/3 in, women (size + 21)/3 in.
constexpr double kUsMenThirds = 22.0;
constexpr double kUsWomenThirds = 21.0;

// UK, from memory, and the two rules differ by a whole size: (size + 23)/3 or (size + 24)/3 in. The
// middle stands for both; the uncertainty grows by half the gap, so that it still reaches one size
// past either.
constexpr double kUkThirds = (23.0 + 24.0) / 2.0;
constexpr Length kUkHalfGap = kThirdInch / 2.0;

// From one size made to the next. European half sizes are seldom; mondopoint from memory.
double size_step(ShoeScale scale) {
  if (scale == ShoeScale::mondopoint) return kMondopointStep.mm();
  return scale == ShoeScale::eu ? 1.0 : 0.5;
}

double least_size(ShoeScale scale) {
  const bool runs_through = scale == ShoeScale::mondopoint || scale == ShoeScale::eu;
  return runs_through ? 0.0 : kLeastGrownSize;
}

}  // namespace

ShoeRule shoe_rule(ShoeScale scale) {
  switch (scale) {
    case ShoeScale::mondopoint:
      return {Length::from_mm(1.0), 0.0, kMondopointStep};
    case ShoeScale::eu:
      return {kEuropeanStep, -kEuropeanZero, kEuropeanStep};
    case ShoeScale::us_men:
      return {kThirdInch, kUsMenThirds, kThirdInch};
    case ShoeScale::us_women:
      return {kThirdInch, kUsWomenThirds, kThirdInch};
    case ShoeScale::uk:
      return {kThirdInch, kUkThirds, kThirdInch + kUkHalfGap};
  }
  ShoeRule nothing;  // no such scale; no caller's range accepts a length of nothing
  return nothing;
}

ShoeFoot foot_from_shoe(ShoeScale scale, double size) {
  const ShoeRule rule = shoe_rule(scale);
  return {rule.step * (size + rule.offset), rule.uncertainty};
}

std::optional<ShoeSizes> shoe_sizes(ShoeScale scale, Length least, Length most) {
  const ShoeRule rule = shoe_rule(scale);
  const double step = size_step(scale);
  ShoeSizes sizes;
  sizes.from = step * ceil_count((least / rule.step - rule.offset) / step);
  sizes.from = std::max(sizes.from, least_size(scale));
  sizes.to = step * floor_count((most / rule.step - rule.offset) / step);
  if (sizes.from > sizes.to) return std::nullopt;
  return sizes;
}

}  // namespace twinround

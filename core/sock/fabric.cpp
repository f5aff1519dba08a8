#include "fabric.h"

#include <algorithm>
#include <cmath>

namespace twinround {

namespace {

// Share of a rib's edge stitch that turns under, from 1x1 = 0.70 (Spencer, from memory): 2t = 0.3 x
// 2 there.
constexpr double kTurnUnder = 0.3;
constexpr double kBeyondOneByOne = 0.10;  // ASSUMPTION

constexpr double kLooseBelow = 10.0;  // ASSUMPTION
constexpr double kUsualUpTo = 13.5;   // ASSUMPTION

double column_contraction(const Rib& rib) {
  const double turned = kTurnUnder * std::min({rib.knit, rib.purl, 2});
  return (rib.repeat() - 2.0 * turned) / rib.repeat();
}

}  // namespace

double stitch_density_per_mm2(Length loop, double ks) {
  return ks / (loop.mm() * loop.mm());
}

Length loop_length(StitchGauge stitches, RoundGauge rounds, double ks) {
  return Length::from_mm(std::sqrt(ks / (stitches.per_mm() * rounds.per_mm())));
}

Length weighed_loop_length(Mass swatch, double swatch_stitches, Length ball_length,
                           Mass ball_mass) {
  return ball_length * (swatch / ball_mass) / swatch_stitches;
}

Length widest_stitch(Length loop) {
  return loop / 2.0;
}

Contraction rib_contraction(const Rib& rib) {
  const double columns = column_contraction(rib);
  if (rib.is_moss()) return {1.0, 0.0};
  if (rib.rounds_per_shift == 1) return {(1.0 + columns) / 2.0, kBeyondOneByOne};
  return {columns, rib.is_one_by_one() ? 0.0 : kBeyondOneByOne};
}

double tex_of(Mass mass, Length length) {
  return 1000.0 * mass.g() / length.m();
}

double tightness(double tex, Length loop) {
  return std::sqrt(tex) / loop.cm();
}

Firmness firmness_of(double tightness_factor) {
  if (tightness_factor < kLooseBelow) return Firmness::loose;
  return tightness_factor <= kUsualUpTo ? Firmness::usual : Firmness::firm;
}

double areal_mass_g_per_m2(double stitches_per_cm2, Length loop, double tex) {
  return stitches_per_cm2 * loop.mm() * tex / 100.0;
}

}  // namespace twinround

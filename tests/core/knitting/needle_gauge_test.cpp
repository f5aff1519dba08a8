#include "needle_gauge.h"

#include <gtest/gtest.h>

#include <cmath>

#include "quadrature.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::reading;

TEST(WeighedMean, ByHand) {
  // 10 +- 1 (a tenth) and 12 +- 0.5 (a twenty-fourth): weights 1 and 4, mean (10 + 4 x 12)/5 =
  // 11.6, error sqrt(1/5) = 0.4472, of 11.6 0.03855.
  const Weighed mean = weighed_mean({10, 0.1}, {12, 0.5 / 12});
  EXPECT_NEAR(mean.value, 11.6, 1e-9);
  EXPECT_NEAR(mean.error, std::sqrt(0.2) / 11.6, 1e-12);
}

TEST(WeighedMean, OfEqualsIsHalfway) {
  const Weighed mean = weighed_mean({20, 0.05}, {20, 0.05});
  EXPECT_NEAR(mean.value, 20, 1e-9);
  EXPECT_NEAR(mean.error, 0.05 / std::sqrt(2.0), 1e-12);
}

TEST(WeighedMean, LiesBetweenAndIsSurerThanEither) {
  for (double error = 0.01; error < 0.3; error += 0.01) {
    const Weighed mean = weighed_mean({10, 0.05}, {11, error});
    EXPECT_GT(mean.value, 10);
    EXPECT_LT(mean.value, 11);
    EXPECT_LT(mean.error * mean.value, std::min(0.05 * 10, error * 11));
  }
}

Gauge swatch() {
  return gauge_from_readings({reading(20, 101.6, 28, 101.6)}, true);
}

NeedleReading toe(double stitches, double width_mm, double rounds, double length_mm) {
  return {stitches, rounds, mm(width_mm), mm(length_mm)};
}

TEST(NeedleGauge, WeighsTheToeWithTheSwatch) {
  // Toe: 20 stitches of one layer over 100 mm, 14 rounds over 51 mm.
  const NeedleGauge both = gauge_on_needles(swatch(), toe(20, 100, 14, 51));
  // By hand. Swatch across: 20/101.6 = 0.196850 a mm; error sqrt(0.02^2 + (0.204/20)^2) =
  // 0.0224508. Toe across: 0.2; sqrt(0.02^2 + (0.204/20)^2 + 0.0219246938^2) = 0.0313805. Sigmas
  // 0.00441944 and 0.0062761; weights 51200 and 25388: mean 0.1978943.
  const double s1 = 20 / 101.6 * in_quadrature(0.02, 0.204 / 20);
  const double s2 = 0.2 * in_quadrature(0.02, 0.204 / 20, 0.0219246938);
  const double w1 = 1 / (s1 * s1);
  const double w2 = 1 / (s2 * s2);
  EXPECT_NEAR(both.gauge.stitches.per_mm(), (w1 * 20 / 101.6 + w2 * 0.2) / (w1 + w2), 1e-12);
  EXPECT_NEAR(both.gauge.stitches.per_mm(), 0.197894, 2e-6);
  EXPECT_NEAR(both.gauge.stitches_error * both.gauge.stitches.per_mm(), 1 / std::sqrt(w1 + w2),
              1e-12);
  // Up: 28/101.6 = 0.275591 and 14/51 = 0.274510; the mean lies between.
  EXPECT_GT(both.gauge.rounds.per_mm(), 0.274510);
  EXPECT_LT(both.gauge.rounds.per_mm(), 0.275591);
  EXPECT_LT(both.apart, 1);
}

TEST(NeedleGauge, AToeWithoutRoundsLeavesThoseOfThePlan) {
  NeedleReading toe;
  toe.stitches = 20;
  toe.width = mm(95);
  const NeedleGauge both = gauge_on_needles(swatch(), toe);
  EXPECT_EQ(both.gauge.rounds, swatch().rounds);
  EXPECT_EQ(both.gauge.rounds_error, swatch().rounds_error);
  EXPECT_GT(both.gauge.stitches, swatch().stitches);
}

TEST(NeedleGauge, AToeWithoutStitchesLeavesThoseOfThePlan) {
  NeedleReading toe;
  toe.rounds = 14;
  toe.height = mm(48);
  const NeedleGauge both = gauge_on_needles(swatch(), toe);
  EXPECT_EQ(both.gauge.stitches, swatch().stitches);
  EXPECT_EQ(both.gauge.stitches_error, swatch().stitches_error);
  EXPECT_GT(both.gauge.rounds, swatch().rounds);
  EXPECT_FALSE(both.has_stitches);
  EXPECT_TRUE(both.has_rounds);
}

TEST(NeedleGauge, TellsHowFarApartTheTwoAre) {
  EXPECT_LT(gauge_on_needles(swatch(), toe(20, 101.6, 28, 101.6)).apart, 1e-9);
  // A fifth tighter than the swatch is another fabric.
  EXPECT_GT(gauge_on_needles(swatch(), toe(24, 101.6, 28, 101.6)).apart, kApart);
  // Only the rounds are off.
  EXPECT_GT(gauge_on_needles(swatch(), toe(20, 101.6, 34, 101.6)).apart, kApart);
}

TEST(NeedleGauge, FartherApartThanOneFabricTheToeCountsAlone) {
  // Swatch across 0.196850 +- 0.0224508 of it; n stitches over 101.6 mm are n/101.6 +-
  // sqrt(0.02^2 + (0.204/n)^2 + 0.0219247^2) of it. At 23 (22.75) the two lie 0.029528 (0.027067)
  // apart, over sqrt(0.0044194^2 + 0.0070223^2) = 0.0082973: 3.56. At 21.5: 0.014764 over
  // 0.0079809: 1.85. At 21.75: 0.017224 over 0.0080340: 2.14.
  const NeedleGauge near = gauge_on_needles(swatch(), toe(21.5, 101.6, 28, 101.6));
  EXPECT_FALSE(near.is_apart);
  EXPECT_FALSE(near.by_toe_alone);
  EXPECT_LT(near.gauge.stitches.per_mm(), 21.5 / 101.6);
  EXPECT_LT(near.gauge.stitches_error, near.toe.stitches_error);

  const NeedleGauge far = gauge_on_needles(swatch(), toe(21.75, 101.6, 28, 101.6));
  EXPECT_TRUE(far.is_apart);
  EXPECT_TRUE(far.by_toe_alone);
  EXPECT_NEAR(far.gauge.stitches.per_mm(), 21.75 / 101.6, 1e-12);
  EXPECT_EQ(far.gauge.stitches_error, far.toe.stitches_error);
  // The rounds agree, but they are another fabric's.
  EXPECT_EQ(far.gauge.rounds_error, far.toe.rounds_error);
}

TEST(NeedleGauge, OfAForeignSwatchTheToeCountsAloneHoweverNear) {
  const NeedleGauge both = gauge_on_needles(swatch(), toe(20.5, 101.6, 28, 101.6), true);
  EXPECT_TRUE(both.by_toe_alone);
  EXPECT_FALSE(both.is_apart);
  EXPECT_NEAR(both.gauge.stitches.per_mm(), 20.5 / 101.6, 1e-12);
  EXPECT_EQ(both.gauge.stitches_error, both.toe.stitches_error);
  EXPECT_FALSE(gauge_on_needles(swatch(), toe(24, 101.6, 28, 101.6), true).is_apart);
}

TEST(NeedleGauge, TrustsAToeMoreThanALabel) {
  const Gauge label = gauge_from_label(*yarn_category(4));
  const NeedleGauge both = gauge_on_needles(label, toe(22, 100, 20, 70));
  const double from_toe = 0.22 - both.gauge.stitches.per_mm();
  const double from_label = both.gauge.stitches.per_mm() - label.stitches.per_mm();
  EXPECT_GT(from_label, 3 * from_toe);
}

}  // namespace
}  // namespace twinround

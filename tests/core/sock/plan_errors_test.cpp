// How sure the plan's figures are, each against the formula worked by hand.
#include <gtest/gtest.h>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::planned;
using test::woman_in_worsted;

// 20 stitches and 28 rounds over 4 in, one reading:
// stitches sqrt(0.02^2 + (0.204/20)^2) = 0.0224508, rounds sqrt(0.02^2 + (0.204/28)^2) = 0.0212857.
constexpr double kStitches = 0.0224508;

TEST(PlanErrors, GirthIsAsUnsureAsTheStitches) {
  EXPECT_NEAR(planned(woman_in_worsted()).girth_error, kStitches, 5e-8);
}

TEST(PlanErrors, GirthAtRestCarriesTheRibsOwnDoubtToo) {
  // k2 p2 pulls in to 0.70, give or take a tenth: sqrt(0.0224508^2 + 0.10^2) = 0.1024892.
  EXPECT_NEAR(planned(woman_in_worsted()).rest_girth_error, 0.1024892, 5e-8);
  // A swatch in the rib itself measured that: nothing but its own reading's error is left.
  PlanRequest ribbed = woman_in_worsted();
  ribbed.swatch.fabric = Fabric::rib;
  EXPECT_NEAR(planned(ribbed).rest_girth_error, kStitches, 5e-8);
  EXPECT_NEAR(planned(ribbed).girth_error, 0.1024892, 5e-8);
}

TEST(PlanErrors, HeelUseCarriesHalfOfEachGaugeAndTheModel) {
  // The loop goes with the square root of both gauges:
  // sqrt((0.0224508/2)^2 + (0.0212857/2)^2 + 0.10^2) = 0.1011893.
  EXPECT_NEAR(planned(woman_in_worsted()).heel_use_error, 0.1011893, 5e-8);
}

TEST(PlanErrors, AWeighedOrAStretchedSwatchMakesTheHeelSurer) {
  PlanRequest weighed = woman_in_worsted();  // 19.0 mm a stitch, shorter than geometry's 19.95
  weighed.swatch.mass = Mass::from_g(9.5);
  weighed.swatch.mass_stitches = 1000;
  EXPECT_NEAR(planned(weighed).heel_use_error, 0.03, 1e-12);
  // Longer than geometry's: the geometry binds the fit, and its doubt stays.
  weighed.swatch.mass = Mass::from_g(11);
  EXPECT_NEAR(planned(weighed).heel_use_error, 0.1011893, 5e-8);
  PlanRequest stretched = woman_in_worsted();
  stretched.swatch.stretched_width = mm(190);
  EXPECT_NEAR(planned(stretched).heel_use_error, 0.05, 1e-12);
}

TEST(PlanErrors, YarnAddsGaugesAndModel) {
  // sqrt(0.0224508^2 + 0.0212857^2 + 0.10^2) = 0.1046763
  EXPECT_NEAR(planned(woman_in_worsted()).yarn.relative_error, 0.1046763, 5e-8);
}

TEST(PlanErrors, HoursAddGaugesAndPace) {
  // A learner's guessed pace is a quarter off: sqrt(0.0224508^2 + 0.0212857^2 + 0.25^2) =
  // 0.2519070.
  EXPECT_NEAR(planned(woman_in_worsted()).time_error, 0.2519070, 5e-8);
  // One that was timed, a tenth: 0.1046763.
  PlanRequest timed = woman_in_worsted();
  timed.stitches_per_minute = 22;
  EXPECT_NEAR(planned(timed).time_error, 0.1046763, 5e-8);
}

TEST(PlanErrors, ALabelsRangeGoesThroughToEveryFigure) {
  // Category 4, 16 to 20 over 4 in: 4/(2 sqrt(3) x 18) = 0.0641500, of stitches and rounds alike.
  PlanRequest label = woman_in_worsted();
  label.swatch.readings.clear();
  const Plan plan = planned(label);
  EXPECT_NEAR(plan.girth_error, 0.0641500, 5e-8);
  // sqrt(2 x 0.0641500^2 + 0.10^2) = 0.1350202
  EXPECT_NEAR(plan.yarn.relative_error, 0.1350202, 1e-7);
  // sqrt(2 x 0.0641500^2 + 0.25^2) = 0.2659520
  EXPECT_NEAR(plan.time_error, 0.2659520, 1e-7);
  // sqrt(2 x 0.0320750^2 + 0.10^2) = 0.1098072
  EXPECT_NEAR(plan.heel_use_error, 0.1098072, 1e-7);
}

TEST(PlanErrors, EachReadingsOwnGaugeIsTold) {
  PlanRequest request = woman_in_worsted();
  request.swatch.readings = {test::reading(20, 100, 28, 100), test::reading_across(21, 100)};
  const Plan plan = planned(request);
  ASSERT_EQ(plan.readings.size(), 2U);
  EXPECT_NEAR(plan.readings[0].stitches.per_mm(), 0.20, 1e-12);
  EXPECT_NEAR(plan.readings[0].rounds->per_mm(), 0.28, 1e-12);
  EXPECT_NEAR(plan.readings[1].stitches.per_mm(), 0.21, 1e-12);
  EXPECT_FALSE(plan.readings[1].rounds.has_value());
  // Of a rib swatch, turned to stockinette like the whole: x 0.70.
  request.swatch.fabric = Fabric::rib;
  EXPECT_NEAR(planned(request).readings[1].stitches.per_mm(), 0.147, 1e-12);
}

}  // namespace
}  // namespace twinround

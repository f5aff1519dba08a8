#include "fit.h"

#include <gtest/gtest.h>

#include <vector>

#include "sock_examples.h"
#include "tube.h"

namespace twinround {
namespace {

using test::mm;

// Ankle at 0.45 x 200 = 90, calf at 1.38 x 200 = 276 mm above the floor: 186 mm for 93 mm of girth.
Leg leg(double ankle_mm = 210, double calf_mm = 303) {
  return {mm(200), mm(ankle_mm), mm(calf_mm)};
}

TEST(Fit, TheLegIsLevelThenStraightThenLevel) {
  struct Row {
    double height = 0;
    double girth = 0;
  };
  for (const Row& row : std::vector<Row>{{0, 210},
                                         {89, 210},
                                         {90, 210},
                                         {92, 211},
                                         {183, 256.5},
                                         {274, 302},
                                         {276, 303},
                                         {500, 303}}) {
    EXPECT_NEAR(girth_at(leg(), mm(row.height)).mm(), row.girth, 1e-9) << row.height;
  }
}

TEST(Fit, FindsTheWidestPlaceUpToTheEdge) {
  // 30 stitches of 10 mm stretch to 300.
  const LegFit low = fit_leg(leg(), mm(183), Stitches(30), mm(10));
  EXPECT_NEAR(low.widest_girth.mm(), 256.5, 1e-9);
  EXPECT_NEAR(low.widest_height.mm(), 183, 1e-9);
  EXPECT_NEAR(low.worst_use, 0.855, 1e-12);
  EXPECT_NEAR(low.edge_girth.mm(), 256.5, 1e-9);
  const LegFit high = fit_leg(leg(), mm(500), Stitches(30), mm(10));
  EXPECT_NEAR(high.widest_girth.mm(), 303, 1e-9);
}

TEST(Fit, AnAnkleWiderThanTheCalfIsTheWidestPlace) {
  const LegFit fit = fit_leg(leg(260, 230), mm(250), Stitches(40), mm(10));
  EXPECT_NEAR(fit.widest_girth.mm(), 260, 1e-9);
  EXPECT_NEAR(fit.widest_height.mm(), 90, 1e-9);
  EXPECT_NEAR(fit.edge_girth.mm(), 234.194, 1e-3);  // 160/186 of the way from 260 to 230
}

TEST(Fit, PassesUpToEightyFiveHundredths) {
  // 255 is 0.85 of 300: reached 45 mm of girth above the ankle's 210, 90 mm above its height.
  EXPECT_FALSE(fit_leg(leg(), mm(179.9), Stitches(30), mm(10)).fails_from.has_value());
  EXPECT_FALSE(fit_leg(leg(), mm(180), Stitches(30), mm(10)).fails_from.has_value());
  EXPECT_TRUE(fit_leg(leg(), mm(180.1), Stitches(30), mm(10)).fails_from.has_value());
}

TEST(Fit, SaysFromWhereTheLegNoLongerPasses) {
  const LegFit fit = fit_leg(leg(), mm(250), Stitches(30), mm(10));
  ASSERT_TRUE(fit.fails_from.has_value());
  EXPECT_NEAR(fit.fails_from->mm(), 180, 1e-9);
  EXPECT_NEAR(girth_use(girth_at(leg(), *fit.fails_from), Stitches(30), mm(10)), 0.85, 1e-12);
}

TEST(Fit, ALegTooWideAtTheAnkleFailsFromTheFloor) {
  // 24 stitches of 10 mm pass 204.
  const LegFit fit = fit_leg(leg(), mm(120), Stitches(24), mm(10));
  ASSERT_TRUE(fit.fails_from.has_value());
  EXPECT_NEAR(fit.fails_from->mm(), 0, 1e-12);
}

TEST(Tube, UseIsTheShareOfTheWidestItGoes) {
  EXPECT_DOUBLE_EQ(girth_use(mm(340), Stitches(40), mm(10)), 0.85);
  EXPECT_DOUBLE_EQ(girth_use(mm(400), Stitches(40), mm(10)), 1.0);
}

TEST(Tube, EaseIsTheShareByWhichItIsLargerThanTheFoot) {
  EXPECT_NEAR(ease_of(Stitches(40), mm(228), StitchGauge::per(20, mm(101.6))), -0.108772, 5e-7);
  EXPECT_NEAR(ease_of(Stitches(50), mm(200), StitchGauge::per_mm(0.25)), 0.0, 1e-15);
}

TEST(Tube, ItsLimitsAreTheOnesTold) {
  EXPECT_EQ(kPassUse, 0.85);
  EXPECT_EQ(kStuckUse, 0.95);
  EXPECT_EQ(kEaseTolerance, 0.04);
  EXPECT_EQ(kTightestEase, -0.20);
  EXPECT_EQ(kLoosestEase, -0.02);
}

}  // namespace
}  // namespace twinround

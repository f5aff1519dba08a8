// The fabric of a plan: its gauge, the yarn in a stitch, and how far a stitch goes.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "plan.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::planned;
using test::told;
using test::with_rib;
using test::with_swatch;
using test::woman_in_worsted;

PlanRequest from_label(int category) {
  PlanRequest request = woman_in_worsted();
  request.swatch = SwatchInput{};
  request.yarn = YarnChoice{};
  request.yarn.category = category;
  return request;
}

TEST(PlanFabric, TheLabelServesWhereThereIsNoSwatch) {
  const Plan plan = planned(from_label(4));
  EXPECT_EQ(plan.gauge.source, GaugeSource::label);
  EXPECT_NEAR(plan.gauge.stitches.per_mm(), 20 / 101.6, 1e-12);
  EXPECT_NEAR(plan.gauge.rounds.per_mm(), 28 / 101.6, 1e-12);
  EXPECT_EQ(plan.stitches.value(), 40);
  EXPECT_EQ(plan.needle.name.diameter.mm(), 4.5);
  EXPECT_TRUE(plan.category_given);
}

TEST(PlanFabric, TheSwatchWinsOverTheLabel) {
  const Plan plan = planned(with_swatch(woman_in_worsted(), 24, 34, 101.6));
  EXPECT_EQ(plan.gauge.source, GaugeSource::swatch);
  EXPECT_NEAR(plan.gauge.stitches.per_mm(), 24 / 101.6, 1e-12);
  EXPECT_EQ(plan.category, 4);
}

TEST(PlanFabric, NeitherSwatchNorLabelIsRefused) {
  PlanRequest request = from_label(4);
  request.yarn.category.reset();
  EXPECT_EQ(told(make_plan(request).problems()), (std::vector<std::string>{"required@/swatch"}));
}

TEST(PlanFabric, ASwatchPointsToItsCategory) {
  struct Row {
    double stitches = 0;
    int category = 0;
  };
  // 23 and 24 are in two ranges: the finer one. 22 is in light alone.
  for (const Row& row : std::vector<Row>{{30, 1}, {24, 2}, {22, 3}, {20, 4}, {14, 5}, {9, 6}}) {
    PlanRequest request = with_swatch(woman_in_worsted(), row.stitches, 1.4 * row.stitches, 101.6);
    request.yarn = YarnChoice{};
    const Plan plan = planned(request);
    EXPECT_EQ(plan.category, row.category) << row.stitches;
    EXPECT_FALSE(plan.category_given);
  }
}

TEST(PlanFabric, ARibSwatchIsTurnedToStockinette) {
  // k2 p2 at 28 over 100 mm in rib: x 0.70 = 19.6 in stockinette.
  PlanRequest request = with_swatch(woman_in_worsted(), 28, 28, 100);
  request.swatch.fabric = Fabric::rib;
  const Plan plan = planned(request);
  EXPECT_EQ(plan.gauge.source, GaugeSource::rib_swatch);
  EXPECT_NEAR(plan.gauge.stitches.per_mm(), 0.196, 1e-12);
  EXPECT_NEAR(plan.gauge.rounds.per_mm(), 0.28, 1e-12);
  // Moss stitch does not pull in: 28 stay 28.
  EXPECT_NEAR(planned(with_rib(request, 1, 1, 1)).gauge.stitches.per_mm(), 0.28, 1e-12);
}

TEST(PlanFabric, WashedOrNotMovesNoCountAndChangesTheYarn) {
  PlanRequest request = woman_in_worsted();
  const Plan washed = planned(request);
  request.swatch.washed = false;
  const Plan unwashed = planned(request);
  EXPECT_EQ(unwashed.stitches, washed.stitches);
  EXPECT_EQ(unwashed.heel_use, washed.heel_use);
  EXPECT_EQ(unwashed.widest_girth, washed.widest_girth);
  EXPECT_NEAR(unwashed.yarn.loop.mm(), 18.71443, 5e-6);  // sqrt(19.0/0.0542502)
  EXPECT_GT(unwashed.yarn.relative_error, washed.yarn.relative_error);
}

// A swatch that weighs so much that its loop is `loop_mm` long: 1000 stitches, 2 m a gram.
PlanRequest weighed(double loop_mm) {
  PlanRequest request = woman_in_worsted();
  request.swatch.mass = Mass::from_g(loop_mm / 2);
  request.swatch.mass_stitches = 1000;
  return request;
}

TEST(PlanFabric, AWeighedSwatchOverrulesGeometryForYarn) {
  const Plan plan = planned(weighed(20.5));
  EXPECT_TRUE(plan.yarn.weighed);
  EXPECT_NEAR(plan.yarn.loop.mm(), 20.5, 1e-9);
  ASSERT_TRUE(plan.yarn.geometry_loop.has_value());  // both are shown
  EXPECT_NEAR(plan.yarn.geometry_loop->mm(), 19.95384, 5e-6);
  // sqrt(0.0224508^2 + 0.0212857^2 + 0.03^2)
  EXPECT_NEAR(plan.yarn.relative_error, 0.0430943, 5e-8);
  EXPECT_FALSE(planned(woman_in_worsted()).yarn.geometry_loop.has_value());
}

TEST(PlanFabric, TheFitTakesTheShorterLoop) {
  // Longer than geometry's 19.95: the width stays 40 x 19.95384/2. Shorter: 40 x 18/2.
  EXPECT_NEAR(planned(weighed(22)).widest_girth.mm(), 399.0769, 5e-5);
  EXPECT_NEAR(planned(weighed(19)).widest_girth.mm(), 380, 1e-9);
}

TEST(PlanFabric, AShortLoopMovesTheCountForTheHeel) {
  // Stitches of 15/2 mm: 310/(0.85 x 7.5) = 48.6, so 52.
  EXPECT_EQ(planned(weighed(15)).stitches.value(), 52);
}

TEST(PlanFabric, TheStretchedSwatchTellsTheWidthItself) {
  PlanRequest request = woman_in_worsted();
  request.swatch.stretched_width = mm(190);
  EXPECT_NEAR(planned(request).widest_girth.mm(), 380, 1e-9);  // 40 x 190/20
  // Of the first reading alone.
  request.swatch.readings.push_back(test::reading(30, 152.4, 42, 152.4));
  EXPECT_NEAR(planned(request).widest_girth.mm(), 380, 1e-9);
}

TEST(PlanFabric, AStretchThatIsNoneIsRefused) {
  PlanRequest request = woman_in_worsted();
  request.swatch.stretched_width = mm(101.6);
  EXPECT_EQ(told(make_plan(request).problems()),
            (std::vector<std::string>{"stretched_too_narrow@/swatch/stretchedWidthMm"}));
}

TEST(PlanFabric, GramsAreGuessedFromTheCategoryWithoutABall) {
  PlanRequest request = woman_in_worsted();
  request.yarn.ball_mass.reset();
  request.yarn.ball_length.reset();
  const Plan plan = planned(request);
  EXPECT_TRUE(plan.yarn.mass_guessed);
  EXPECT_NEAR(plan.yarn.pair_mass->g(), 190.82793 / 1.9, 1e-4);  // 190 m in 100 g
  EXPECT_FALSE(plan.yarn.balls.has_value());
}

TEST(PlanFabric, FirmnessNeedsABallOrANamedCategory) {
  PlanRequest request = woman_in_worsted();
  request.yarn = YarnChoice{};
  EXPECT_FALSE(planned(request).firmness.has_value());
  request.yarn.category = 4;  // 190 m: sqrt(526.3)/1.9954 = 11.5
  EXPECT_EQ(planned(request).firmness, Firmness::usual);
}

}  // namespace
}  // namespace twinround

// Requests that a careless sock calculator gets wrong.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "plan.h"
#include "sock_examples.h"
#include "tube.h"

namespace twinround {
namespace {

using test::find_code;
using test::mm;
using test::number_in;
using test::planned;
using test::says;
using test::told;
using test::with_rib;
using test::with_swatch;
using test::woman_in_worsted;

// k4 p3 at 18 stitches and 25 rounds, girth 228: the counts are 28, 42, 56, and T is 36.35.
class FourKnitThreePurl : public testing::TestWithParam<double> {
 protected:
  Plan plan() const {
    return planned(with_rib(with_swatch(woman_in_worsted(), 18, 25, GetParam()), 4, 3));
  }
};

TEST_P(FourKnitThreePurl, IsNotSilentlyFortyTwo) {
  const Plan sock = plan();
  EXPECT_EQ(sock.stitches.value(), 42);
  // 42/(228 x 18/101.6) - 1 = +0.0398, or over 100 mm +0.0234: larger than the foot.
  EXPECT_NEAR(sock.girth_ease, 42 / (228 * 18 / GetParam()) - 1, 1e-12);
  const auto outside = find_code(sock.cautions, "ease_outside");
  ASSERT_TRUE(outside.has_value());
  EXPECT_NEAR(*number_in(*outside, "ease"), sock.girth_ease, 1e-12);
  EXPECT_NEAR(*number_in(*outside, "asked"), -0.10, 1e-12);
}

TEST_P(FourKnitThreePurl, OffersRibsThatFit) {
  const std::vector<RibThatFits> ribs = plan().ribs_that_fit;
  ASSERT_FALSE(ribs.empty());
  for (const RibThatFits& rib : ribs) {
    EXPECT_FALSE(rib.knit == 4 && rib.purl == 3);
    EXPECT_LE(std::abs(rib.ease + 0.10), kEaseTolerance);
    EXPECT_EQ(rib.count.value(), 36);
    // And a sock asked for in that rib is what was offered, without a word about its ease.
    const Plan sock =
        planned(with_rib(with_swatch(woman_in_worsted(), 18, 25, GetParam()), rib.knit, rib.purl));
    EXPECT_EQ(sock.stitches, rib.count);
    EXPECT_FALSE(says(sock.cautions, "ease_outside") || says(sock.cautions, "ease_off"));
  }
}

INSTANTIATE_TEST_SUITE_P(OverFourInchesAndTenCentimetres, FourKnitThreePurl,
                         testing::Values(101.6, 100.0),
                         [](const testing::TestParamInfo<double>& over) {
                           return over.param > 101 ? "FourInches" : "TenCentimetres";
                         });

TEST(HardCase, OneByOneMovedEveryRoundLeansNowhereAndSaysSo) {
  const Plan plan = planned(with_rib(woman_in_worsted(), 1, 1, 1));
  EXPECT_TRUE(says(plan.cautions, "moss_stitch"));
  EXPECT_FALSE(plan.pitch.has_value());
  EXPECT_EQ(plan.rest_girth, plan.finished_girth);  // it does not pull in
}

TEST(HardCase, TheHeelGuardMovesTheCountOfAnUnwashedThreeByTwo) {
  // 22 stitches and 34 rounds over 4 in: T = 228 x 0.9 x 22/101.6 = 44.43, counts 40 and 50: 40 is
  // nearer. A stitch is at most sqrt(21.6/(22 x 34))/2 x 101.6 = 8.63256 mm wide, washed or not:
  // 305/(40 x 8.63256) = 0.8833 does not pass, 305/(50 x 8.63256) = 0.7066 does.
  PlanRequest request = with_rib(with_swatch(woman_in_worsted(), 22, 34, 101.6), 3, 2);
  request.swatch.washed = false;
  request.foot.heel_ankle_girth = mm(305);
  const Plan plan = planned(request);
  EXPECT_EQ(plan.stitches.value(), 50);
  EXPECT_NEAR(plan.heel_use, 0.7066267, 5e-8);
  const auto moved = find_code(plan.cautions, "heel_moved_count");
  ASSERT_TRUE(moved.has_value());
  EXPECT_EQ(number_in(*moved, "from"), 40);
  EXPECT_EQ(number_in(*moved, "to"), 50);
  EXPECT_NEAR(*number_in(*moved, "heelUse"), 0.8832834, 5e-8);
  EXPECT_TRUE(says(plan.cautions, "unwashed_swatch"));
  // 50 are 1.3 % larger than the foot: that is said too, with ribs that fit.
  EXPECT_TRUE(says(plan.cautions, "ease_outside"));
  EXPECT_FALSE(plan.ribs_that_fit.empty());
}

TEST(HardCase, AHeelThatPassesMovesNothing) {
  // The same sock on a heel of 293: 293/345.30 = 0.8485.
  PlanRequest request = with_rib(with_swatch(woman_in_worsted(), 22, 34, 101.6), 3, 2);
  request.swatch.washed = false;
  request.foot.heel_ankle_girth = mm(293);
  const Plan plan = planned(request);
  EXPECT_EQ(plan.stitches.value(), 40);
  EXPECT_FALSE(says(plan.cautions, "heel_moved_count"));
}

TEST(HardCase, ALegOfFortyIsRefusedWithTheLeastLeg) {
  PlanRequest request = woman_in_worsted();
  request.leg_height = mm(40);
  const Result<Plan> refused = make_plan(request);
  ASSERT_FALSE(refused.ok());
  ASSERT_EQ(told(refused.problems()), (std::vector<std::string>{"leg_too_short@/legHeightMm"}));
  // (310/2 - 0.571 x 61.5)/sqrt(2) + 30 = 114.77
  const double least = *number_in(refused.problems().front(), "leastMm");
  EXPECT_NEAR(least, 114.7704, 5e-5);
  request.leg_height = mm(least);
  EXPECT_TRUE(make_plan(request).ok());
}

TEST(HardCase, AChildsShoeGivesAGirthMarkedAsEstimated) {
  // EU 27: 25 x 6.67 = 166.75 mm of foot, 0.97 of it round the ball: 161.7.
  PlanRequest request = with_swatch(woman_in_worsted(), 28, 40, 100);
  request.foot = FootInput{};
  request.foot.shoe = ShoeInput{ShoeScale::eu, 27};
  request.foot.body = Body::child;
  request.leg_height = mm(120);
  const Plan plan = planned(request);
  EXPECT_TRUE(plan.foot.length.estimated);
  EXPECT_TRUE(plan.foot.ball_girth.estimated);
  EXPECT_GE(plan.foot.ball_girth.value.mm(), 155);
  EXPECT_LE(plan.foot.ball_girth.value.mm(), 170);
  EXPECT_NEAR(plan.foot.ball_girth.value.mm(), 161.7475, 1e-9);
  EXPECT_GT(plan.foot.ball_girth.spread.mm(), 0);
  EXPECT_TRUE(says(plan.cautions, "foot_estimated"));
}

TEST(HardCase, ABallOf200ForANeedOf199Point8IsJustEnough) {
  PlanRequest request = woman_in_worsted();
  request.yarn_margin = 199.8 / planned(request).yarn.need.pair.m() - 1;
  const Plan plan = planned(request);
  EXPECT_NEAR(plan.yarn.need.with_margin.m(), 199.8, 1e-9);
  EXPECT_EQ(plan.yarn.balls->count, 1);
  EXPECT_TRUE(plan.yarn.balls->just);
  EXPECT_NEAR(plan.yarn.balls->spare.m(), 0.2, 1e-9);
  const auto just = find_code(plan.cautions, "balls_just");
  ASSERT_TRUE(just.has_value());
  EXPECT_NE(just->message.find("0 m to spare"), std::string::npos) << just->message;
}

TEST(HardCase, ANeedOf195ForABallOf200IsNotJust) {
  PlanRequest request = woman_in_worsted();
  request.yarn_margin = 195.0 / planned(request).yarn.need.pair.m() - 1;
  const Plan plan = planned(request);
  EXPECT_EQ(plan.yarn.balls->count, 1);
  EXPECT_FALSE(says(plan.cautions, "balls_just"));
}

}  // namespace
}  // namespace twinround

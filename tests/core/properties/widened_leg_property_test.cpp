// What holds for every widened leg: it passes at every height, and is no wider than it must be.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <vector>

#include "widened_legs.h"

namespace twinround {
namespace {

using test::Dice;
using test::for_random_requests;
using test::for_widened_legs;
using test::mm;
using test::one_by_one;
using test::RoundSeen;
using test::says;
using test::wide_legged;

constexpr int kTimes = test::kWideLegs;

// The section on the leg written out again: 0.93 and 1.60 of the ball where not measured, level to
// 0.45 of the foot's length above the floor, straight to 1.38, level above.
double leg_girth(const PlanRequest& request, double height) {
  const double ball = request.foot.ball_girth->mm();
  const double foot = request.foot.length->mm();
  const double ankle = request.foot.ankle_girth ? request.foot.ankle_girth->mm() : 0.93 * ball;
  const double calf = request.foot.calf_girth ? request.foot.calf_girth->mm() : 1.60 * ball;
  if (height <= 0.45 * foot) return ankle;
  if (height >= 1.38 * foot) return calf;
  return ankle + (calf - ankle) * (height - 0.45 * foot) / ((1.38 - 0.45) * foot);
}

void expect_passes_at(const PlanRequest& request, const Plan& plan,
                      const std::vector<RoundSeen>& rounds, double height) {
  const double rounds_above = (request.leg_height.mm() - height) * plan.gauge.rounds.per_mm();
  // The round that lies at that height: the last one reaches up to the edge.
  const int from_top = static_cast<int>(rounds_above);
  const int at = static_cast<int>(rounds.size()) - 1 - from_top;
  ASSERT_GE(at, 0);
  const RoundSeen& round = rounds[static_cast<std::size_t>(at)];
  if (round.section == Section::toe) return;  // a toe that long lies on no leg
  const double widest = round.stitches * plan.widest_girth.mm() / plan.stitches.value();
  ASSERT_LE(leg_girth(request, height), (0.85 + 1e-9) * widest)
      << "at " << height << " mm, round " << at << " of " << rounds.size() << ", " << round.stitches
      << " stitches";
}

TEST(EveryWidenedLeg, PassesAtEveryHeight) {
  for_widened_legs([](const PlanRequest& request, const Plan& plan) {
    const std::vector<RoundSeen> rounds = one_by_one(plan);
    const double edge = request.leg_height.mm();
    const double round_mm = 1 / plan.gauge.rounds.per_mm();
    for (double height = 0; height < edge; height += round_mm / 3) {
      expect_passes_at(request, plan, rounds, height);
      if (testing::Test::HasFailure()) return;
    }
    for (const WideningStage& stage : plan.widening) {
      for (const double off : {-1e-6, 0.0, 1e-6, 0.5 * round_mm, round_mm}) {
        const double height = stage.needed_from.mm() + off;
        if (height >= 0 && height <= edge) expect_passes_at(request, plan, rounds, height);
      }
    }
    expect_passes_at(request, plan, rounds, edge);
  });
}

TEST(EveryWidenedLeg, IsWidenedNoLowerThanItMust) {
  // A widening round lies at most two rounds below the height where it is needed, but for stages
  // that need room below one another and a need within the cuff.
  for_widened_legs([](const PlanRequest& request, const Plan& plan) {
    const int stages = static_cast<int>(plan.widening.size());
    const int below_cuff = plan.length.spiral.value();
    for (int i = 0; i < stages; ++i) {
      const WideningStage& stage = plan.widening[static_cast<std::size_t>(i)];
      ASSERT_GE(stage.round, 0);
      ASSERT_LT(stage.round, below_cuff);
      ASSERT_TRUE(i == 0 || stage.round > plan.widening[static_cast<std::size_t>(i - 1)].round);
      const double above =
          (request.leg_height - stage.needed_from).mm() * plan.gauge.rounds.per_mm();
      const double needed = below_cuff + plan.length.cuff.value() - above;
      const double room = std::min(needed, static_cast<double>(below_cuff)) - stage.round;
      ASSERT_LE(room, 2 + (stages - 1 - i));
    }
  });
}

TEST(ALargerCalf, NeverTakesFewerStitchesAtTheEdge) {
  int compared = 0;
  int more = 0;
  for_random_requests(kTimes, [&](const PlanRequest& random, Dice& dice) {
    PlanRequest request = wide_legged(random, dice);
    request.foot.calf_girth = *request.foot.ball_girth * dice.between(1.2, 2.0);
    PlanRequest larger = request;
    larger.foot.calf_girth = *request.foot.calf_girth * dice.between(1.0, 1.4);
    const Result<Plan> before = make_plan(request);
    const Result<Plan> after = make_plan(larger);
    // What is refused is refused for the larger leg too.
    ASSERT_TRUE(before.ok() || !after.ok());
    if (!before.ok() || !after.ok()) return;
    ++compared;
    ASSERT_EQ(after.value().stitches, before.value().stitches);
    ASSERT_GE(after.value().edge_stitches, before.value().edge_stitches);
    ASSERT_GE(after.value().widening.size(), before.value().widening.size());
    ASSERT_GE(after.value().yarn.need.pair, before.value().yarn.need.pair);
    ASSERT_GE(after.value().needle.cable_least, before.value().needle.cable_least);
    more += after.value().edge_stitches > before.value().edge_stitches ? 1 : 0;
  });
  EXPECT_GT(compared, kTimes / 4);
  EXPECT_GT(more, 0);
}

TEST(ALegTooWide, IsRefusedOnlyWhereTheWidestRibDoesNotPass) {
  int refused = 0;
  for_random_requests(kTimes, [&](const PlanRequest& random, Dice& dice) {
    PlanRequest request = wide_legged(random, dice);
    request.rib.knit = dice.whole(6, 12);
    request.rib.purl = dice.whole(6, 12);
    request.foot.calf_girth = *request.foot.ball_girth * dice.between(2.0, 3.0);
    const Result<Plan> result = make_plan(request);
    const auto problem = test::find_code(result.problems(), "leg_too_wide");
    if (!problem) return;
    ++refused;
    ASSERT_EQ(problem->field, "/legHeightMm");
    ASSERT_GT(*test::number_in(*problem, "use"), 0.85);
    // A leg that ends where it says is planned, or not for this reason.
    const double below = *test::number_in(*problem, "heightMm");
    if (below <= 0.0) return;
    request.leg_height = mm(below - 0.01);
    ASSERT_FALSE(says(make_plan(request).problems(), "leg_too_wide"));
    request.leg_height = mm(below + 0.01);
    ASSERT_TRUE(says(make_plan(request).problems(), "leg_too_wide") ||
                says(make_plan(request).problems(), "leg_too_short"));
  });
  EXPECT_GT(refused, 0);
}

}  // namespace
}  // namespace twinround

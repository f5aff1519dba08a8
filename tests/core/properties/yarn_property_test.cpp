// What holds for the yarn of every plan.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "random_requests.h"

namespace twinround {
namespace {

using test::Dice;
using test::for_random_plans;
using test::says;

constexpr int kTimes = 2000;

void expect_same(Length a, Length b) {
  ASSERT_NEAR(a.mm(), b.mm(), 1e-9 * std::max(1.0, std::abs(b.mm())));
}

TEST(EveryYarnNeed, AddsUpFromItsSectionsToThePair) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    const YarnNeed& need = plan.yarn.need;
    expect_same(need.cast_on + need.toe + need.spiral + need.widening + need.cuff + need.bind_off +
                    need.tails,
                need.sock);
    expect_same(need.pair, need.sock + need.sock);
    expect_same(need.with_margin, need.pair + request.yarn_margin * need.pair);
    ASSERT_NEAR(plan.yarn.pair_mass->g(), 2 * plan.yarn.sock_mass->g(), 1e-9);
  });
}

TEST(EveryYarnNeed, IsItsLoopsRoundByRound) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    Length toe, spiral, widening, cuff;
    for (const RoundSpan& span : plan.rounds) {
      const Length yarn = plan.yarn.loop * (span.rounds * span.stitches);
      Length& section = span.section == Section::toe        ? toe
                        : span.section == Section::spiral   ? spiral
                        : span.section == Section::widening ? widening
                                                            : cuff;
      section = section + yarn;
    }
    const YarnNeed& need = plan.yarn.need;
    expect_same(need.cast_on, plan.yarn.loop * plan.toe.cast_on.value());
    expect_same(need.toe, toe);
    expect_same(need.spiral, spiral);
    expect_same(need.widening, widening);
    expect_same(need.cuff, cuff);
    expect_same(need.tails, test::mm(400));
    const Length heel = request.foot.heel_ankle_girth.value_or(1.45 * *request.foot.ball_girth);
    expect_same(need.bind_off, 3.3 * std::max(heel, request.foot.calf_girth.value_or(heel)));
  });
}

TEST(EveryYarnNeed, FitsInItsBalls) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    ASSERT_EQ(plan.yarn.balls.has_value(), request.yarn.ball_length.has_value());
    if (!plan.yarn.balls) return;
    const Length ball = *request.yarn.ball_length;
    const Length need = plan.yarn.need.with_margin;
    const int balls = plan.yarn.balls->count;
    ASSERT_GE(ball.mm() * balls, need.mm() * (1 - 1e-8));
    ASSERT_LT(ball.mm() * (balls - 1), need.mm());  // one fewer would not do
    expect_same(plan.yarn.balls->spare, ball * balls - need);
    ASSERT_EQ(says(plan.cautions, "balls_just") || says(plan.cautions, "balls_barely_begun"),
              plan.yarn.balls->just);
  });
}

TEST(EveryPlansTime, IsStitchesAndTurns) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    int stitches = 0;
    int rounds = 0;
    for (const RoundSpan& span : plan.rounds) {
      stitches += span.rounds * span.stitches;
      rounds += span.rounds;
    }
    ASSERT_NEAR(plan.time.minutes(),
                2.0 * stitches / request.stitches_per_minute + rounds * 20.0 / 60.0, 1e-6);
  });
}

}  // namespace
}  // namespace twinround

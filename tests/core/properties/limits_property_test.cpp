// Requests at the outer limits of what may be asked: every field at its least, its most, or
// anywhere between. Whatever comes, it is a whole plan or a refusal, and no number runs away.
#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <string>

#include "random_requests.h"

namespace twinround {
namespace {

using test::Dice;
using test::mm;

double limit_or_between(Dice& dice, double least, double most) {
  if (dice.chance(0.2)) return least;
  if (dice.chance(0.25)) return most;
  return dice.between(least, most);
}

Length length_in(Dice& dice, double least_mm, double most_mm) {
  return mm(limit_or_between(dice, least_mm, most_mm));
}

int whole_in(Dice& dice, int least, int most) {
  if (dice.chance(0.2)) return least;
  return dice.chance(0.25) ? most : dice.whole(least, most);
}

SwatchInput swatch_at_limits(Dice& dice) {
  SwatchInput swatch;
  const int readings = dice.chance(0.1) ? 0 : whole_in(dice, 1, 12);
  for (int i = 0; i < readings; ++i) {
    const double stitches = limit_or_between(dice, 1, 400);
    const double width = limit_or_between(dice, 10, 500);
    swatch.readings.push_back(i == 0
                                  ? test::reading(stitches, width, limit_or_between(dice, 1, 600),
                                                  limit_or_between(dice, 10, 500))
                                  : test::reading_across(stitches, width));
  }
  swatch.fabric = dice.chance(0.5) ? Fabric::rib : Fabric::stockinette;
  swatch.washed = dice.chance(0.5);
  if (dice.chance(0.5)) swatch.needle = length_in(dice, 1, 25);
  if (dice.chance(0.2)) swatch.stretched_width = length_in(dice, 10, 500);
  if (dice.chance(0.3)) {
    swatch.mass = Mass::from_g(limit_or_between(dice, 0.5, 200));
    swatch.mass_stitches = limit_or_between(dice, 50, 20000);
  }
  return swatch;
}

FootInput foot_at_limits(Dice& dice) {
  FootInput foot;
  if (dice.chance(0.7)) foot.length = length_in(dice, 80, 400);
  if (dice.chance(0.7)) foot.ball_girth = length_in(dice, 80, 400);
  if (dice.chance(0.5)) foot.heel_ankle_girth = length_in(dice, 80, 600);
  if (dice.chance(0.5)) foot.ankle_girth = length_in(dice, 80, 600);
  if (dice.chance(0.5)) foot.calf_girth = length_in(dice, 80, 700);
  if (dice.chance(0.4)) {
    const auto scale = static_cast<ShoeScale>(dice.whole(0, 4));
    foot.shoe = scale == ShoeScale::mondopoint ? ShoeInput{scale, limit_or_between(dice, 80, 400)}
                                               : ShoeInput{scale, limit_or_between(dice, 0, 60)};
  }
  if (dice.chance(0.5)) foot.body = static_cast<Body>(dice.whole(0, 2));
  return foot;
}

PlanRequest request_at_limits(Dice& dice) {
  PlanRequest request;
  request.swatch = swatch_at_limits(dice);
  request.foot = foot_at_limits(dice);
  if (dice.chance(0.5)) request.yarn.category = dice.whole(0, 7);
  if (dice.chance(0.5)) {
    request.yarn.ball_mass = Mass::from_g(limit_or_between(dice, 5, 2000));
    request.yarn.ball_length = Length::from_m(limit_or_between(dice, 5, 5000));
  }
  request.leg_height = length_in(dice, 40, 700);
  request.cuff = length_in(dice, 0, 300);
  request.rib = Rib{whole_in(dice, 1, 12), whole_in(dice, 1, 12), whole_in(dice, 0, 40),
                    static_cast<Lean>(dice.whole(0, 2))};
  request.girth_ease = limit_or_between(dice, -0.40, 0.20);
  request.length_ease = limit_or_between(dice, -0.20, 0.20);
  request.toe_share = limit_or_between(dice, 0.05, 0.50);
  request.tip_share = limit_or_between(dice, 0.10, 1);
  request.toe_shape = dice.chance(0.5) ? ToeShape::even : ToeShape::round;
  if (dice.chance(0.5)) request.stitch_count = whole_in(dice, 8, 400);
  request.stitches_per_minute = limit_or_between(dice, 1, 200);
  request.yarn_margin = limit_or_between(dice, 0, 1);
  return request;
}

void expect_sound(const Plan& plan) {
  for (const double figure :
       {plan.gauge.stitches.per_mm(), plan.gauge.rounds.per_mm(), plan.gauge.stitches_error,
        plan.gauge.rounds_error, plan.rest_girth.mm(), plan.widest_girth.mm(), plan.heel_use,
        plan.leg_fit.worst_use, plan.yarn.need.with_margin.m(), plan.yarn.relative_error,
        plan.time.minutes(), plan.needle.cable_least.mm()}) {
    ASSERT_TRUE(std::isfinite(figure));
    ASSERT_GT(figure, 0);
  }
  ASSERT_EQ(plan.toe.counts.back(), plan.stitches.value());
  int rounds = 0;
  for (const RoundSpan& span : plan.rounds) rounds += span.rounds;
  ASSERT_EQ(rounds, plan.length.total.value());
  ASSERT_LE(rounds, 2000);
  for (const Problem& caution : plan.cautions) {
    ASSERT_NE(caution.message, "");
    for (const Number& number : caution.numbers) ASSERT_TRUE(std::isfinite(number.value));
  }
}

TEST(OuterLimits, GiveAWholePlanOrARefusal) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  int plans = 0;
  int refusals = 0;
  for (std::uint32_t i = 0; i < 4000; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    Dice dice(first + i);
    const Result<Plan> result = make_plan(request_at_limits(dice));
    if (result.ok()) {
      ++plans;
      expect_sound(result.value());
    } else {
      ++refusals;
      ASSERT_FALSE(result.problems().empty());
      for (const Problem& problem : result.problems()) {
        ASSERT_EQ(problem.field.front(), '/');
        ASSERT_NE(problem.message, "");
        for (const Number& number : problem.numbers) ASSERT_TRUE(std::isfinite(number.value));
      }
    }
    if (testing::Test::HasFailure()) return;
  }
  EXPECT_GT(plans, 100);
  EXPECT_GT(refusals, 100);
}

}  // namespace
}  // namespace twinround

#include "yarn_left.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::woman_in_worsted;

Plan plan_of(const PlanRequest& request) {
  const Result<Plan> plan = make_plan(request);
  EXPECT_TRUE(plan.ok());
  return plan.value();
}

// Yarn from round `from` (0: the first) to the end, bind-off and tail with it, round by round.
Length yarn_from(const Plan& plan, int from) {
  Length sum = plan.yarn.need.bind_off + kTail;
  int done = 0;
  for (const RoundSpan& span : plan.rounds) {
    for (int i = 0; i < span.rounds; ++i, ++done) {
      if (done >= from) sum = sum + plan.yarn.loop * span.stitches;
    }
  }
  return sum;
}

TEST(YarnLeft, ThePlansOwnMetresMakeExactlyThePlan) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  // From the first round: the sock's need, less the cast-on and the first tail.
  const Length at_start = plan.yarn.need.sock - plan.yarn.need.cast_on - kTail;
  EXPECT_NEAR(at_start.mm(), yarn_from(plan, 0).mm(), 1e-6);
  for (int done = 0; done <= plan.length.total.value(); ++done) {
    const YarnLeft left =
        yarn_left(plan, request.leg_height, {done, yarn_from(plan, done) + mm(0.001)});
    ASSERT_EQ(left.rounds, plan.length.total.value() - done) << done;
    ASSERT_EQ(left.rounds_short, 0);
    ASSERT_NEAR(left.leg_height.mm(), request.leg_height.mm(), 1e-6);
    ASSERT_EQ(left.rounds_to_unpick, 0);
  }
}

TEST(YarnLeft, OneRoundsYarnLessIsOneRoundShortAndALowerLeg) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  const Length one_less = plan.yarn.loop * 40;
  const YarnLeft left = yarn_left(plan, request.leg_height, {60, yarn_from(plan, 60) - one_less});
  EXPECT_EQ(left.rounds, 59);
  EXPECT_EQ(left.rounds_short, 1);
  // A round is 101.6/28 = 3.63 mm high.
  EXPECT_NEAR(left.leg_height.mm(), 200 - 101.6 / 28, 1e-6);
}

TEST(YarnLeft, MoreThanThePlanAsksMakesAHigherLeg) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  const Length ten_more = plan.yarn.loop * 400 + mm(1);
  const YarnLeft left = yarn_left(plan, request.leg_height, {60, yarn_from(plan, 60) + ten_more});
  EXPECT_EQ(left.rounds, 70);
  EXPECT_NEAR(left.leg_height.mm(), 200 + 10 * 101.6 / 28, 1e-6);
}

TEST(YarnLeft, TellsThePlansRoundsFromThoseBeyondIt) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  const Length beyond = plan.yarn.loop * 400 + mm(1);
  const YarnLeft more = yarn_left(plan, request.leg_height, {60, yarn_from(plan, 60) + beyond});
  EXPECT_EQ(more.rounds_to_go, 60);
  EXPECT_EQ(more.rounds_over, 10);
  EXPECT_NEAR(more.left_over.mm(), beyond.mm(), 1e-6);
  const YarnLeft less = yarn_left(plan, request.leg_height, {60, yarn_from(plan, 60) - mm(1)});
  EXPECT_EQ(less.rounds_short, 1);
  EXPECT_EQ(less.rounds_to_go, 60);
  EXPECT_EQ(less.rounds_over, 0);
  EXPECT_EQ(less.left_over.mm(), 0);
  const YarnLeft done = yarn_left(plan, request.leg_height, {120, yarn_from(plan, 120)});
  EXPECT_EQ(done.rounds_to_go, 0);
  EXPECT_EQ(done.rounds_over, 0);
  EXPECT_EQ(yarn_left(plan, request.leg_height, {125, mm(5000)}).rounds_to_go, 0);
}

TEST(YarnLeft, ALegBelowTheBendOfTheAnkleIsNone) {
  // Heel 310 mm, foot 246 mm: d = 155 - 0.571 x 61.5 = 119.88, the bend d/sqrt(2) = 84.77 mm high.
  // 200 - 84.77 = 115.2 mm are 31.76 rounds of 3.6286 mm: 31 fewer reach it, 32 do not.
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  const Length round = plan.yarn.loop * 40;
  EXPECT_TRUE(
      yarn_left(plan, request.leg_height, {60, yarn_from(plan, 60) - 31 * round}).reaches_leg);
  const YarnLeft low = yarn_left(plan, request.leg_height, {60, yarn_from(plan, 60) - 32 * round});
  EXPECT_EQ(low.last_round, 88);
  EXPECT_FALSE(low.reaches_leg);
  EXPECT_GT(low.leg_height.mm(), 0);
}

TEST(YarnLeft, UnderOneBindOffTheLastRoundsAreUnpicked) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  const Length reserve = plan.yarn.need.bind_off + kTail;
  EXPECT_EQ(yarn_left(plan, request.leg_height, {110, reserve}).rounds_to_unpick, 0);
  EXPECT_EQ(yarn_left(plan, request.leg_height, {110, reserve - mm(1)}).rounds_to_unpick, 1);
  // The edge has to pass the calf, 373 mm. A round of 40 stitches gives 798 mm back: 1431 mm are
  // two rounds.
  EXPECT_NEAR(reserve.mm(), 3.3 * 373 + 200, 1e-9);
  EXPECT_EQ(yarn_left(plan, request.leg_height, {110, mm(0)}).rounds_to_unpick, 2);
  EXPECT_EQ(yarn_left(plan, request.leg_height, {110, mm(0)}).rounds_short, 12);
}

TEST(YarnLeft, PastThePlanTheSockWentOnAsItEnds) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  const Length reserve = plan.yarn.need.bind_off + kTail;
  const YarnLeft more = yarn_left(plan, request.leg_height, {125, reserve + plan.yarn.loop * 121});
  EXPECT_EQ(more.rounds, 3);
  EXPECT_EQ(more.last_round, 128);
  EXPECT_NEAR(more.leg_height.mm(), 200 + 8 * 101.6 / 28, 1e-6);
  const YarnLeft none = yarn_left(plan, request.leg_height, {125, reserve - mm(1)});
  EXPECT_EQ(none.rounds_to_unpick, 1);
  EXPECT_EQ(none.last_round, 124);
}

TEST(YarnLeft, NeverPromisesMoreYarnThanThereIs) {
  constexpr unsigned kSeed = 20260;
  std::mt19937 chance(kSeed);
  const PlanRequest request = woman_in_worsted();
  const Plan plan = plan_of(request);
  std::uniform_int_distribution<int> round(0, plan.length.total.value());
  std::uniform_real_distribution<double> metres(0, 120);
  for (int i = 0; i < 3000; ++i) {
    const int done = round(chance);
    const Length had = Length::from_m(metres(chance));
    const YarnLeft left = yarn_left(plan, request.leg_height, {done, had});
    const int end = done + left.rounds - left.rounds_to_unpick;
    ASSERT_GE(end, 0) << "seed " << kSeed;
    // What is promised, from the plan's own rounds: their yarn and the reserve are there.
    const int planned = std::min(end, plan.length.total.value());
    const Length need = yarn_from(plan, done) - yarn_from(plan, planned);
    if (left.rounds > 0) {
      ASSERT_LE((need + left.kept_back).mm(), had.mm() + 1e-6) << "seed " << kSeed;
    }
  }
}

TEST(LoopAsKnit, IsTheYarnUsedOverTheStitchesWorked) {
  const Plan plan = plan_of(woman_in_worsted());
  // 16 cast on, then the toe's first two rounds of the plan.
  const int worked = 16 + plan.toe.counts[0] + plan.toe.counts[1];
  const auto loop = loop_as_knit(plan, 2, mm(200 + 21.0 * worked));
  ASSERT_TRUE(loop);
  EXPECT_NEAR(loop->mm(), 21, 1e-9);
  EXPECT_FALSE(loop_as_knit(plan, 0, mm(500)));
  EXPECT_FALSE(loop_as_knit(plan, 2, mm(200)));
}

TEST(RoundToJoin, IsTheLastOneThatTheOldBallReachesOutsideTheBallOfTheFoot) {
  const Plan plan = plan_of(woman_in_worsted());
  // In the leg, 40 stitches a round of 798 mm: after the end's 200 mm there is yarn for two rounds
  // and a little; at the beginning of the third there is still some.
  EXPECT_EQ(round_to_join(plan, 90, plan.yarn.loop * 85 + kTail), 93);
  // The foot is 246 mm; its ball lies 36.9 to 98.4 mm from the tip: rounds 11 to 27.
  EXPECT_EQ(round_to_join(plan, 4, plan.yarn.loop * 500 + kTail), 10);
  EXPECT_EQ(round_to_join(plan, 12, plan.yarn.loop * 100 + kTail), 0);
}

}  // namespace
}  // namespace twinround

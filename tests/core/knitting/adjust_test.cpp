#include "adjust.h"

#include <gtest/gtest.h>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::woman_in_worsted;

AdjustRequest in_the_toe(double stitches, double width_mm, double rounds, double length_mm) {
  AdjustRequest request;
  request.plan = woman_in_worsted();
  request.rounds_done = 14;
  request.toe = NeedleReading{stitches, rounds, mm(width_mm), mm(length_mm)};
  return request;
}

Adjustment adjusted(const AdjustRequest& request) {
  const Result<Adjustment> adjustment = adjust(request);
  EXPECT_TRUE(adjustment.ok());
  return adjustment.value();
}

const Way* way_of(const Adjustment& adjustment, Remedy remedy) {
  for (const Way& way : adjustment.ways) {
    if (way.remedy == remedy) return &way;
  }
  return nullptr;
}

TEST(Adjust, AToeLikeTheSwatchIsKept) {
  const Adjustment same = adjusted(in_the_toe(20, 101.6, 14, 50.8));
  EXPECT_EQ(same.advised, Remedy::keep);
  ASSERT_EQ(same.ways.size(), 1u);
  const Way& keep = same.ways.front();
  EXPECT_EQ(keep.stitches.value(), 40);
  EXPECT_NEAR(keep.finished_girth.mm(), 203.2, 1e-6);
  EXPECT_EQ(keep.to_go.value(), 106);  // 120 - 14
  EXPECT_EQ(keep.lost.value(), 0);
}

TEST(Adjust, ACountOfHerOwnIsKeptToTheEaseSheChoseWithIt) {
  AdjustRequest request = in_the_toe(20, 101.6, 14, 50.8);
  request.plan.stitch_count = 44;
  const Adjustment same = adjusted(request);
  EXPECT_EQ(same.advised, Remedy::keep);
  ASSERT_EQ(same.ways.size(), 1u);
  EXPECT_EQ(same.ways.front().stitches.value(), 44);
}

TEST(Adjust, ATighterHandIsToldAnotherCountAndWhatItCosts) {
  // 24 stitches over 4 in where the swatch had 20: weighed about 21, and 44 are advised.
  const Adjustment tighter = adjusted(in_the_toe(24, 101.6, 14, 50.8));
  const Way* keep = way_of(tighter, Remedy::keep);
  const Way* change = way_of(tighter, Remedy::change);
  const Way* restart = way_of(tighter, Remedy::restart);
  ASSERT_TRUE(keep && change && restart);
  EXPECT_EQ(keep->stitches.value(), 40);
  EXPECT_EQ(change->stitches.value(), 44);
  EXPECT_LT(keep->girth_ease, change->girth_ease);
  // All of the toe that is knit stays; four stitches more than was planned are one increase more.
  EXPECT_EQ(change->lost.value(), 0);
  EXPECT_EQ(restart->lost.value(), 14);
  EXPECT_EQ(restart->to_go, restart->total);
  EXPECT_GT(restart->time_to_go, change->time_to_go);
  EXPECT_EQ(tighter.advised, Remedy::change);
  EXPECT_GT(tighter.gauge->apart, kApart);
}

TEST(Adjust, ALooserHandLeavesIncreasesOutOrUnpicksThem) {
  // 17 over 4 in: weighed about 19, 36 are advised; the toe is increased to 40 in round 11.
  AdjustRequest request = in_the_toe(17, 101.6, 14, 50.8);
  request.rounds_done = 5;
  const Adjustment in_time = adjusted(request);
  const Way* change = way_of(in_time, Remedy::change);
  ASSERT_TRUE(change);
  EXPECT_EQ(change->stitches.value(), 36);
  ASSERT_EQ(change->steps.size(), 1u);
  EXPECT_EQ(change->steps[0].round, 11);
  EXPECT_EQ(change->steps[0].worked, ToeSides::none);
  EXPECT_EQ(change->lost.value(), 0);
  EXPECT_EQ(change->rib_from, 18);

  // Deep in the rib it costs every round back to where the toe had 36.
  request.rounds_done = 60;
  const Adjustment late = adjusted(request);
  const Way* back = way_of(late, Remedy::change);
  ASSERT_TRUE(back);
  EXPECT_EQ(back->from, 10);
  EXPECT_EQ(back->lost.value(), 50);
  EXPECT_EQ(back->to_go.value(), back->total.value() - 10);
}

TEST(Adjust, AddsToTheToeWhatACountOfMoreNeeds) {
  const Adjustment tighter = adjusted(in_the_toe(24, 101.6, 14, 50.8));
  const Way* change = way_of(tighter, Remedy::change);
  ASSERT_TRUE(change);
  ASSERT_EQ(change->steps.size(), 1u);
  EXPECT_EQ(change->steps[0].round, 17);
  EXPECT_EQ(change->steps[0].stitches.value(), 44);
  EXPECT_EQ(change->rib_from, 18);
}

TEST(Adjust, YarnToGoIsTheNeedLessWhatIsKnit) {
  const Adjustment same = adjusted(in_the_toe(20, 101.6, 14, 50.8));
  const Way& keep = same.ways.front();
  // 16 cast on, and the toe to round 14: 16 + 20 + 2 x 24 + 28 + 2 x 32 + 3 x 36 + 4 x 40 = 444.
  const YarnFigures& yarn = same.known.yarn;
  const Length knit = yarn.loop * (16 + 444) + kTail;
  EXPECT_NEAR(keep.yarn_to_go.mm(), (keep.yarn_pair - 2 * knit).mm(), 1e-6);
  // From the cast-on again it is the pair's.
  const Adjustment tighter = adjusted(in_the_toe(24, 101.6, 14, 50.8));
  const Way* restart = way_of(tighter, Remedy::restart);
  ASSERT_TRUE(restart);
  EXPECT_EQ(restart->yarn_to_go, restart->yarn_pair);
}

TEST(Adjust, TheToeThatIsKnitStaysAsItIsWhateverItsRounds) {
  // Flatter rounds would have made a toe of more rounds: hers has 17.
  const Adjustment flatter = adjusted(in_the_toe(20, 101.6, 17, 50.8));
  EXPECT_EQ(flatter.known.toe.counts, flatter.planned.toe.counts);
  EXPECT_EQ(flatter.ways.front().rib_from, 18);
}

TEST(Adjust, WithoutAMeasuredToeThereAreNoWays) {
  AdjustRequest request;
  request.plan = woman_in_worsted();
  request.rounds_done = 14;
  const Adjustment only_asked = adjusted(request);
  EXPECT_FALSE(only_asked.gauge);
  EXPECT_TRUE(only_asked.ways.empty());
  EXPECT_EQ(only_asked.known.length.total.value(), 120);
}

TEST(Adjust, ACountThatIsHardlyNearerIsNotWorthItsRounds) {
  // T = 228 x 0.9 x g. At 17 over 4 in g is 0.18489 and T 37.94: 40 are 5.4 % too wide, 36 are 5.1
  // % too narrow. At 16 g is 0.17991 and T 36.92: 8.3 % and 2.5 %.
  const Adjustment hardly = adjusted(in_the_toe(17, 101.6, 14, 50.8));
  ASSERT_EQ(hardly.ways.size(), 3u);
  EXPECT_EQ(hardly.advised, Remedy::keep);
  const Adjustment clearly = adjusted(in_the_toe(16, 101.6, 14, 50.8));
  ASSERT_EQ(clearly.ways.size(), 3u);
  EXPECT_EQ(clearly.advised, Remedy::change);
}

TEST(Adjust, FlatterRoundsAskForMoreOfThem) {
  // 16 rounds where 14 were planned over the toe: the same lengths take more rounds.
  const Adjustment flatter = adjusted(in_the_toe(20, 101.6, 16, 50.8));
  const Way& keep = flatter.ways.front();
  EXPECT_GT(keep.total.value(), 120);
  EXPECT_EQ(keep.to_go.value(), keep.total.value() - 14);
}

TEST(Adjust, RefusesMoreRoundsThanThePlanHas) {
  AdjustRequest request = in_the_toe(20, 101.6, 14, 50.8);
  request.rounds_done = 120;
  EXPECT_TRUE(adjust(request).ok());
  request.rounds_done = 121;
  const auto problems = adjust(request).problems();
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].field, "/needles/roundsDone");
  EXPECT_EQ(problems[0].code, "past_the_plan");
}

TEST(Adjust, RefusesWhatAPlanRefuses) {
  AdjustRequest request = in_the_toe(20, 101.6, 14, 50.8);
  request.plan.leg_height = mm(40);
  EXPECT_FALSE(adjust(request).ok());
}

}  // namespace
}  // namespace twinround

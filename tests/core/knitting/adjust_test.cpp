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
  // 24 stitches over 4 in where the swatch had 20 are another fabric. T = 228 x 0.9 x 24/101.6 =
  // 48.5: 48 are advised.
  const Adjustment tighter = adjusted(in_the_toe(24, 101.6, 14, 50.8));
  const Way* keep = way_of(tighter, Remedy::keep);
  const Way* change = way_of(tighter, Remedy::change);
  const Way* restart = way_of(tighter, Remedy::restart);
  ASSERT_TRUE(keep && change && restart);
  EXPECT_EQ(keep->stitches.value(), 40);
  EXPECT_EQ(change->stitches.value(), 48);
  EXPECT_LT(keep->girth_ease, change->girth_ease);
  // All of the toe that is knit stays; eight stitches more than was planned are two increases more.
  EXPECT_EQ(change->lost.value(), 0);
  EXPECT_EQ(restart->lost.value(), 14);
  EXPECT_EQ(restart->to_go, restart->total);
  EXPECT_GT(restart->time_to_go, change->time_to_go);
  EXPECT_EQ(tighter.advised, Remedy::change);
  EXPECT_GT(tighter.gauge->apart, kApart);
}

TEST(Adjust, ALooserHandLeavesIncreasesOutOrUnpicksThem) {
  // 17 over 4 in: T = 34.3, and 36 are advised; the toe is increased to 40 in round 11.
  AdjustRequest request = in_the_toe(17, 101.6, 5, 18.1);
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
  // T = 228 x 0.9 x 22/101.6 = 44.4.
  const Adjustment tighter = adjusted(in_the_toe(22, 101.6, 14, 50.8));
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
  AdjustRequest request = in_the_toe(20, 101.6, 17, 50.8);
  request.rounds_done = 17;
  const Adjustment flatter = adjusted(request);
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
  // T = 228 x 0.9 x n/101.6. At 18.75 over 4 in it is 37.87: 40 are 5.6 % too wide, 36 are 4.9 %
  // too narrow. At 18.25 it is 36.86: 8.5 % and 2.3 %.
  AdjustRequest request = in_the_toe(18.75, 101.6, 14, 50.8);
  request.is_swatch_foreign = true;
  const Adjustment hardly = adjusted(request);
  ASSERT_EQ(hardly.ways.size(), 3u);
  EXPECT_EQ(hardly.advised, Remedy::keep);
  request.toe->stitches = 18.25;
  const Adjustment clearly = adjusted(request);
  ASSERT_EQ(clearly.ways.size(), 3u);
  EXPECT_EQ(clearly.advised, Remedy::change);
}

TEST(Adjust, FlatterRoundsAskForMoreOfThem) {
  // 16 rounds where 14 were planned over the toe: the same lengths take more rounds.
  AdjustRequest request = in_the_toe(20, 101.6, 16, 50.8);
  request.rounds_done = 16;
  const Adjustment flatter = adjusted(request);
  const Way& keep = flatter.ways.front();
  EXPECT_GT(keep.total.value(), 120);
  EXPECT_EQ(keep.to_go.value(), keep.total.value() - 16);
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

TEST(Adjust, RefusesMoreStitchesThanAWholeRoundHas) {
  // Over 250 mm, so that the gauge itself is possible: one layer of the 40 has 20.
  EXPECT_TRUE(adjust(in_the_toe(40, 250, 14, 50.8)).ok());
  const auto problems = adjust(in_the_toe(40.25, 250, 14, 50.8)).problems();
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].field, "/needles/stitches");
  EXPECT_EQ(problems[0].code, "more_than_a_layer");
  ASSERT_EQ(problems[0].numbers.size(), 2u);
  EXPECT_EQ(problems[0].numbers[1].value, 20);
}

TEST(Adjust, RefusesMoreRoundsCountedThanAreDone) {
  EXPECT_TRUE(adjust(in_the_toe(20, 101.6, 14, 50.8)).ok());
  const auto problems = adjust(in_the_toe(20, 101.6, 14.25, 50.8)).problems();
  ASSERT_EQ(problems.size(), 1u);
  EXPECT_EQ(problems[0].field, "/needles/rounds");
  EXPECT_EQ(problems[0].code, "more_rounds_than_done");
  // Both at once are told at once.
  EXPECT_EQ(adjust(in_the_toe(100, 80, 15, 50.8)).problems().size(), 2u);
}

TEST(Adjust, FarApartAllGoesByTheToeAsIfItWereTheSwatch) {
  const Adjustment far = adjusted(in_the_toe(24, 101.6, 14, 48));
  ASSERT_TRUE(far.gauge->by_toe_alone);
  PlanRequest by_toe = woman_in_worsted();
  by_toe.swatch.readings = {test::reading(24, 101.6, 14, 48)};
  by_toe.swatch.washed = false;
  const Result<Plan> plan = make_plan(by_toe);
  ASSERT_TRUE(plan.ok());
  const Way* restart = way_of(far, Remedy::restart);
  ASSERT_TRUE(restart);
  EXPECT_EQ(restart->stitches, plan.value().stitches);
  EXPECT_EQ(restart->total, plan.value().length.total);
  EXPECT_NEAR(restart->yarn_pair.mm(), plan.value().yarn.need.pair.mm(), 1e-6);
}

TEST(Adjust, AForeignSwatchIsNoEvidence) {
  AdjustRequest request = in_the_toe(20.5, 101.6, 14, 50.8);
  request.is_swatch_foreign = true;
  const Adjustment alone = adjusted(request);
  // 40 stitches at 20.5 over 4 in.
  EXPECT_NEAR(alone.ways.front().finished_girth.mm(), 40 * 101.6 / 20.5, 1e-6);
}

TEST(Adjust, RoundsPastWhatTheToeAsksForAreACuffThatMuchLonger) {
  // 12 rounds over 50.8 mm: 436.2 mm are 103.04 rounds, 103, where 120 were planned and are knit.
  AdjustRequest request = in_the_toe(20, 101.6, 12, 50.8);
  request.is_swatch_foreign = true;
  request.rounds_done = 120;
  const Adjustment over = adjusted(request);
  const Way& keep = over.ways.front();
  EXPECT_EQ(keep.total.value(), 103);
  EXPECT_EQ(keep.over.value(), 17);
  EXPECT_EQ(keep.to_go.value(), 0);
  EXPECT_EQ(keep.lost.value(), 0);
  request.rounds_done = 103;
  EXPECT_EQ(adjusted(request).ways.front().over.value(), 0);
}

TEST(Adjust, RefusesWhatAPlanRefuses) {
  AdjustRequest request = in_the_toe(20, 101.6, 14, 50.8);
  request.plan.leg_height = mm(40);
  EXPECT_FALSE(adjust(request).ok());
}

}  // namespace
}  // namespace twinround

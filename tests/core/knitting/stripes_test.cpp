#include "stripes.h"

#include <gtest/gtest.h>

#include <string>

#include "ten_rounds.h"

namespace twinround {
namespace {

using test::metres;
using test::ten_rounds;

// 0.5 m of A, 0.4 of B, 0.1 of C; 200 g a kilometre.
StripesInput three_colours() {
  StripesInput input;
  input.repeat = {{0, metres(0.5)}, {1, metres(0.4)}, {2, metres(0.1)}};
  input.tex = 200;
  return input;
}

StripePlan plan_of(const StripesInput& input) {
  const Result<StripePlan> plan = stripe_plan(ten_rounds(), input);
  EXPECT_TRUE(plan.ok());
  return plan.value();
}

std::string colours(const std::vector<Band>& bands) {
  std::string letters;
  for (const Band& band : bands) letters += static_cast<char>('A' + band.colour);
  return letters;
}

TEST(Bands, ChangeWhereTheMetresDo) {
  const StripePlan plan = plan_of(three_colours());
  // From the beginning of the sock: A to 0.5 m, B to 0.9, C to 1.0, A to 1.5, B to 1.8. Round 3
  // begins at 0.5 m, round 7 at 0.9, round 8 at 1.0; 1.5 m lie in the bind-off.
  ASSERT_EQ(colours(plan.a), "ABCAB");
  const struct {
    int from, to;
    double share_to, m;
  } rows[] = {{1, 3, 0, 0.5}, {3, 7, 0, 0.4}, {7, 8, 0, 0.1}, {8, 10, 1, 0.5}, {10, 10, 1, 0.3}};
  for (std::size_t i = 0; i < plan.a.size(); ++i) {
    EXPECT_EQ(plan.a[i].from.round, rows[i].from) << i;
    EXPECT_EQ(plan.a[i].to.round, rows[i].to) << i;
    EXPECT_NEAR(plan.a[i].to.share, rows[i].share_to, 1e-9) << i;
    EXPECT_NEAR(plan.a[i].yarn.m(), rows[i].m, 1e-9) << i;
  }
  EXPECT_TRUE(plan.alike);
  EXPECT_EQ(plan.off_b->yarn.m(), 0);
}

TEST(Bands, ChangeWithinARoundAndSayHowFar) {
  StripesInput input = three_colours();
  input.start_a = metres(0.03);
  const StripePlan plan = plan_of(input);
  // A ends at 0.47 m: 0.7 of round 2, which begins at 0.4.
  EXPECT_EQ(plan.a[0].to.round, 2);
  EXPECT_NEAR(plan.a[0].to.share, 0.7, 1e-9);
}

TEST(TwoBalls, MatchOnceOneIsPulledOff) {
  StripesInput input = three_colours();
  input.start_a = metres(0.2);
  input.start_b = metres(0.6);
  input.ball = metres(3);
  const StripePlan plan = plan_of(input);
  EXPECT_FALSE(plan.alike);
  EXPECT_FALSE(plan.opposite);
  // From 0.6 on to the next 0.2, a metre being one repeat; or A's ball from 0.2 to 0.6.
  EXPECT_NEAR(plan.off_b->yarn.m(), 0.6, 1e-9);
  EXPECT_NEAR(plan.off_b->mass.g(), 0.12, 1e-9);
  EXPECT_NEAR(plan.off_a->yarn.m(), 0.4, 1e-9);
  EXPECT_NEAR(plan.use_a->spare.m(), 3 - 1.8, 1e-9);
  EXPECT_NEAR(plan.use_b->spare.m(), 3 - 0.6 - 1.8, 1e-9);
}

TEST(ABallsYarn, IsEnoughWithItsMarginOrJust) {
  const struct {
    double ball;
    Enough enough;
  } rows[] = {{1.98, Enough::yes}, {1.979, Enough::just}, {1.8, Enough::just}, {1.799, Enough::no}};
  for (const auto& row : rows) {
    StripesInput input = three_colours();
    input.ball = metres(row.ball);
    EXPECT_EQ(plan_of(input).use_b->enough, row.enough) << row.ball;
  }
}

TEST(BothEndsOfABall, RunOppositeWaysAndDoNotMatch) {
  StripesInput input = three_colours();
  input.from = YarnFrom::two_ends;
  input.ball = metres(5);
  const StripePlan plan = plan_of(input);
  EXPECT_TRUE(plan.opposite);
  EXPECT_FALSE(plan.mirrors);
  EXPECT_FALSE(plan.alike);
  EXPECT_FALSE(plan.off_b);
  EXPECT_FALSE(plan.off_a);
  EXPECT_EQ(colours(plan.a), "ABCAB");
  EXPECT_EQ(colours(plan.b), "CBACBA");
  EXPECT_NEAR(plan.use_a->spare.m(), 2.5 - 1.8, 1e-9);
  EXPECT_NEAR(plan.use_b->spare.m(), 2.5 - 1.8, 1e-9);
}

TEST(BothEndsOfABall, MatchWhereTheRepeatIsItsOwnMirror) {
  StripesInput input = three_colours();
  input.repeat = {{0, metres(0.5)}, {1, metres(0.2)}, {0, metres(0.5)}, {2, metres(0.8)}};
  input.from = YarnFrom::two_ends;
  input.ball = metres(6);
  const StripePlan plan = plan_of(input);
  EXPECT_TRUE(plan.mirrors);
  // A begins with 0.5 m of A; B's end lies at the end of C, 0.8 m of which come off.
  EXPECT_NEAR(plan.off_b->yarn.m(), 0.8, 1e-9);
  EXPECT_FALSE(plan.off_a);
  EXPECT_NEAR(plan.use_b->spare.m(), (6 - 0.8) / 2 - 1.8, 1e-9);
}

TEST(BothEndsOfABall, OfOneColourAreAlikeAsTheyAre) {
  StripesInput input;
  input.repeat = {{0, metres(0.7)}};
  input.from = YarnFrom::two_ends;
  input.ball = metres(4);
  const StripePlan plan = plan_of(input);
  EXPECT_TRUE(plan.alike);
  EXPECT_FALSE(plan.opposite);
  EXPECT_EQ(plan.off_b->yarn.m(), 0);
}

TEST(ABallCutInTwo, IsCutWhereTheRepeatBeginsAgain) {
  const struct {
    double ball, cut;
  } rows[] = {
      {5, 2},                           // the half is 2.5, as near to 2 as to 3
      {5.2, 3},                         // 2.6
      {4, 2},   {1.4, 1}, {0.9, 0.45},  // no whole repeat in it
  };
  for (const auto& row : rows) {
    StripesInput input = three_colours();
    input.from = YarnFrom::halves;
    input.start_a = metres(0.3);
    input.ball = metres(row.ball);
    const StripePlan plan = plan_of(input);
    ASSERT_TRUE(plan.cut);
    EXPECT_NEAR(plan.cut->yarn.m(), row.cut, 1e-9) << row.ball;
    EXPECT_NEAR(plan.cut->mass.g(), row.cut * 0.2, 1e-9) << row.ball;
    EXPECT_NEAR(plan.use_a->holds.m() + plan.use_b->holds.m(), row.ball, 1e-9);
    EXPECT_EQ(plan.alike, row.cut >= 1) << row.ball;
  }
}

TEST(Stripes, TooShortToBeAnyAreRefused) {
  StripesInput input = three_colours();
  input.repeat = {{0, metres(0.001)}, {1, metres(0.001)}};
  EXPECT_TRUE(stripe_plan(ten_rounds(), input).ok());  // 1801
  input.repeat = {{0, metres(0.0008)}, {1, metres(0.0008)}};
  const auto refused = stripe_plan(ten_rounds(), input);  // 2251
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(refused.problems()[0].code, "too_many_bands");
  EXPECT_EQ(refused.problems()[0].field, "/repeat/stripes");
}

}  // namespace
}  // namespace twinround

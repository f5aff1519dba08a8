// A left and a right toe: the great toe's side widens fast, the other slowly.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "sock_examples.h"
#include "toe.h"
#include "toe_examples.h"

namespace twinround {
namespace {

using test::mirrored;
using test::planned;
using test::stitch_by_stitch;
using test::toe_for;
using test::woman_in_worsted;

ToeInput differing_toe(int stitches, double rounds_of_foot_quarter = 17) {
  ToeInput input = toe_for(stitches, rounds_of_foot_quarter);
  input.shape = ToeShape::left_right;
  return input;
}

// g great side, l little side, b both, . plain.
std::string sides_of(const Toe& toe) {
  std::string letters;
  for (const ToeSides sides : toe.sides) {
    letters += sides == ToeSides::none    ? '.'
               : sides == ToeSides::both  ? 'b'
               : sides == ToeSides::great ? 'g'
                                          : 'l';
  }
  return letters;
}

TEST(LeftRightToe, IsShapedAsWorkedByHand) {
  // 40 stitches from 16 in 17 rounds, 6 increases of two stitches on each side; x = (j - 1)/16.
  // Great side: ideal 6 sqrt(1 - (1 - x/0.6)^2) = 2.67, 3.66, 4.36, 4.87 in rounds 2 to 5, 5.27,
  // 5.56, 5.77, 5.91 in 6 to 9; due half a widening before: 2, 3, (two together: 4 is plain) 5, 6,
  // (7 plain) 8, and the sixth at 5.5 and over: 9.
  // Little side: ideal 6x = 0.375 (j - 1); due at 0.5: round 3 (0.75); 1.5: 5 (1.5 exactly); 2.5: 8
  // (2.625); 3.5: 11 (3.75); 4.5: 13 (4.5); 5.5: 16 (5.625).
  const Toe toe = shape_toe(differing_toe(40));
  EXPECT_EQ(sides_of(toe), ".gb.bg.bg.l.l..l.");
  EXPECT_EQ(toe.counts,
            (std::vector<int>{16, 18, 22, 22, 26, 28, 28, 32, 34, 34, 36, 36, 38, 38, 38, 40, 40}));
}

TEST(LeftRightToe, EndsOnTheCountOfTheOtherShapesInAsManyRounds) {
  for (int n = 8; n <= 400; n += 2) {
    for (const double rounds : {0.0, 9.0, 17.0, 40.0, 111.0}) {
      ToeInput input = differing_toe(n, rounds);
      const Toe differ = shape_toe(input);
      input.shape = ToeShape::round;
      const Toe alike = shape_toe(input);
      SCOPED_TRACE(std::to_string(n) + " stitches, " + std::to_string(rounds) + " rounds");
      ASSERT_EQ(differ.cast_on, alike.cast_on);
      ASSERT_EQ(differ.counts.size(), alike.counts.size());
      ASSERT_EQ(differ.counts.back(), n);
    }
  }
}

TEST(LeftRightToe, WidensBothSidesAlikeInTheEndAndNeverInThreeRoundsTogether) {
  for (int n = 8; n <= 400; n += 2) {
    for (const double rounds : {0.0, 5.0, 12.0, 17.0, 40.0, 111.0}) {
      const std::string sides = sides_of(shape_toe(differing_toe(n, rounds)));
      SCOPED_TRACE(std::to_string(n) + " stitches: " + sides);
      const auto both = std::count(sides.begin(), sides.end(), 'b');
      const auto great = std::count(sides.begin(), sides.end(), 'g');
      const auto little = std::count(sides.begin(), sides.end(), 'l');
      ASSERT_EQ(great, little);
      ASSERT_EQ(4 * both + 2 * great + 2 * little,
                n - shape_toe(differing_toe(n, rounds)).cast_on.value());
      ASSERT_EQ(sides.front(), '.');
      int together = 0;
      for (const char side : sides) {
        together = side == '.' ? 0 : together + 1;
        ASSERT_LE(together, 2);
      }
    }
  }
}

TEST(LeftRightToe, TheGreatSideIsAheadUntilTheLittleOneHasCaughtUp) {
  const std::string sides = sides_of(shape_toe(differing_toe(64, 24)));
  int ahead = 0;
  int most = 0;
  for (const char side : sides) {
    ahead += side == 'g' ? 1 : side == 'l' ? -1 : 0;
    ASSERT_GE(ahead, 0) << sides;
    most = std::max(most, ahead);
  }
  EXPECT_EQ(ahead, 0);
  EXPECT_GE(most, 2) << sides;  // or left and right would hardly differ
}

TEST(LeftRightToe, OneSideIsTheStartOfTheFirstHalfAndTheEndOfTheSecond) {
  const RoundLine great = toe_round(Stitches(10), ToeSides::great);
  EXPECT_EQ(stitch_by_stitch(great.first), "k>kkkk");
  EXPECT_EQ(stitch_by_stitch(great.second), "kkkk<k");
  const RoundLine little = toe_round(Stitches(10), ToeSides::little);
  EXPECT_EQ(stitch_by_stitch(little.first), "kkkk<k");
  EXPECT_EQ(stitch_by_stitch(little.second), "k>kkkk");
}

TEST(LeftRightToe, TheSecondSockIsTheFirstOnesMirror) {
  PlanRequest request = woman_in_worsted();
  request.toe_shape = ToeShape::left_right;
  const Plan plan = planned(request);
  bool any = false;
  for (const RoundSpan& span : plan.rounds) {
    if (span.section != Section::toe) {
      EXPECT_EQ(span.line, span.second_line);  // the rib of both is the same
      continue;
    }
    const RoundLine& first = plan.lines[static_cast<std::size_t>(span.line)];
    const RoundLine& second = plan.lines[static_cast<std::size_t>(span.second_line)];
    EXPECT_EQ(stitch_by_stitch(second.first), mirrored(stitch_by_stitch(first.first)));
    EXPECT_EQ(stitch_by_stitch(second.second), mirrored(stitch_by_stitch(first.second)));
    any = any || span.line != span.second_line;
  }
  EXPECT_TRUE(any);
  // The count, the rounds and nearly the yarn are those of a sock with one toe for both feet.
  const Plan alike = planned(woman_in_worsted());
  EXPECT_EQ(plan.stitches, alike.stitches);
  EXPECT_EQ(plan.length.total, alike.length.total);
  EXPECT_NEAR(plan.yarn.need.pair.m(), alike.yarn.need.pair.m(), 3);
}

}  // namespace
}  // namespace twinround

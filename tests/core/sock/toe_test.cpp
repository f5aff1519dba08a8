#include "toe.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "sock_examples.h"
#include "toe_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::stitch_by_stitch;
using test::toe_for;

std::vector<int> steps_of(const Toe& toe) {
  std::vector<int> steps;
  for (std::size_t j = 1; j < toe.counts.size(); ++j) {
    steps.push_back(toe.counts[j] - toe.counts[j - 1]);
  }
  return steps;
}

int most_together(const Toe& toe) {
  int together = 0;
  int most = 0;
  for (const int step : steps_of(toe)) {
    together = step > 0 ? together + 1 : 0;
    most = std::max(most, together);
  }
  return most;
}

struct CastOn {
  int stitches = 0;
  double tip_share = 0;
  int expected = 0;
};

TEST(Toe, CastsOnTheTipShareInStepsOfFourFromTheCount) {
  const std::vector<CastOn> table = {
      {40, 0.40, 16},   // 16 itself
      {44, 0.40, 16},   // 17.6 lies nearest 16 among 12, 16, 20
      {42, 0.40, 18},   // 16.8: 14, 18
      {50, 0.40, 22},   // 20: 18 and 22 are as near, a tie goes up
      {60, 0.40, 24},   // 24 itself
      {60, 0.43, 24},   // 25.8 is 1.8 from 24
      {60, 0.44, 28},   // 26.4 is 1.6 from 28
      {64, 0.50, 32},   // half
      {20, 0.40, 8},    // 8 itself
      {20, 0.10, 8},    // 2: but no fewer than 8
      {18, 0.10, 10},   // 2 would be nearest, and 6 is too few
      {8, 0.40, 8},     // the least count is its own tip
      {10, 0.40, 10},   // 6 is too few: all 10
      {12, 0.10, 8},    // the first that has an increase
      {40, 1.0, 40},    // the whole count: a blunt tube
      {400, 0.10, 40},  // the most
      {400, 0.40, 160},
  };
  for (const CastOn& row : table) {
    EXPECT_EQ(cast_on_total(Stitches(row.stitches), row.tip_share).value(), row.expected)
        << row.stitches << " stitches, tip share " << row.tip_share;
  }
}

TEST(Toe, ATieOfTheCastOnIsATieWithinABillionth) {
  // 50 stitches: 18 and 22 are as near to 20.
  EXPECT_EQ(cast_on_total(Stitches(50), 0.40).value(), 22);
  EXPECT_EQ(cast_on_total(Stitches(50), 0.40 - 4e-12).value(), 22);  // 2e-10 under
  EXPECT_EQ(cast_on_total(Stitches(50), 0.40 - 1e-9).value(), 18);   // 5e-8 under
}

TEST(Toe, WrapsAreHalfTheCastOn) {
  for (int n = 8; n <= 400; n += 2) {
    const Toe toe = shape_toe(toe_for(n));
    EXPECT_EQ(2 * toe.wraps, toe.cast_on.value()) << n;
  }
}

TEST(Toe, IsShapedRoundAsWorkedByHand) {
  // 40 stitches from 16 in 17 rounds, 6 increase rounds. x = (j - 1)/16,
  // ideal = 16 + 24 sqrt(1 - (1 - x)^2): round 2 24.4, 3 27.6, 4 30.0, 5 31.9, 6 33.4, 7 34.7,
  // 8 35.8, 9 36.8, 10 37.6, 11 38.2, 12 38.8. An increase where ideal - count >= 2, two at most:
  // 2 (24.4 - 16), 3 (27.6 - 20), not 4, 5 (31.9 - 24), 6 (33.4 - 28), not 7, 8 (35.8 - 32 = 3.8);
  // then 36.8, 37.6 are under 38, and round 11 (38.2) is due.
  const Toe toe = shape_toe(toe_for(40));
  EXPECT_EQ(toe.cast_on.value(), 16);
  EXPECT_EQ(toe.wraps, 8);
  EXPECT_EQ(toe.increase_rounds, 6);
  EXPECT_EQ(toe.counts,
            (std::vector<int>{16, 20, 24, 24, 28, 32, 32, 36, 36, 36, 40, 40, 40, 40, 40, 40, 40}));
}

TEST(Toe, IsShapedEvenAsWorkedByHand) {
  // ideal = 16 + 24 (j - 1)/16 = 16 + 1.5 (j - 1): 2 above the count first in round 3 (19), then
  // (22 needed) 5, (26) 8 (26.5), (30) 11 (31), (34) 13 (exactly 34: due), (38) 16 (38.5).
  ToeInput input = toe_for(40);
  input.shape = ToeShape::even;
  EXPECT_EQ(shape_toe(input).counts,
            (std::vector<int>{16, 16, 20, 20, 24, 24, 24, 28, 28, 28, 32, 32, 36, 36, 36, 40, 40}));
}

TEST(Toe, TakesAsManyRoundsAsTheIncreasesNeedWhereTheShareIsShort) {
  // 64 stitches from 24 (25.6 is 1.6 from 24): 10 increases, 1 + 10 + floor(9/2) = 15 rounds at
  // least: two together, one plain, and so on.
  ToeInput input = toe_for(64);
  input.share = 0.05;
  const Toe toe = shape_toe(input);
  EXPECT_EQ(toe.counts,
            (std::vector<int>{24, 28, 32, 32, 36, 40, 40, 44, 48, 48, 52, 56, 56, 60, 64}));
}

TEST(Toe, ItsLengthIsTheGreaterOfShareAndNeed) {
  // 40 stitches need 1 + 6 + floor(5/2) = 9 rounds.
  struct Row {
    double asked = 0;
    int rounds = 0;
  };
  for (const Row& row : std::vector<Row>{
           {2, 9}, {8.5, 9}, {9.49, 9}, {9.5, 10}, {16.949, 17}, {17.49, 17}, {17.5, 18}}) {
    EXPECT_EQ(shape_toe(toe_for(40, row.asked)).counts.size(), static_cast<std::size_t>(row.rounds))
        << row.asked;
  }
}

TEST(Toe, WithNothingToIncreaseIsPlain) {
  ToeInput input = toe_for(40, 12);
  input.tip_share = 1;
  const Toe toe = shape_toe(input);
  EXPECT_EQ(toe.increase_rounds, 0);
  EXPECT_EQ(toe.counts, std::vector<int>(12, 40));
  input.share = 0;  // nothing asked, nothing needed: round 1 stands alone
  EXPECT_EQ(shape_toe(input).counts, std::vector<int>(1, 40));
}

TEST(Toe, OneIncreaseNeedsTwoRounds) {
  ToeInput input = toe_for(12, 0.4);
  EXPECT_EQ(shape_toe(input).counts, (std::vector<int>{8, 12}));
}

class ToeOfAnySize : public testing::TestWithParam<ToeShape> {
 protected:
  // Every even count, with toes from too short to far too long.
  template <class Check>
  void for_each_toe(const Check& check) const {
    for (int n = 8; n <= 400; n += 2) {
      for (const double rounds : {0.0, 5.0, 12.0, 17.0, 40.0, 111.0}) {
        for (const double tip : {0.10, 0.33, 0.40, 0.75, 1.0}) {
          ToeInput input = toe_for(n, rounds);
          input.tip_share = tip;
          input.shape = GetParam();
          SCOPED_TRACE(std::to_string(n) + " stitches, " + std::to_string(rounds) +
                       " rounds asked, tip share " + std::to_string(tip));
          check(input, shape_toe(input));
        }
      }
    }
  }
};

TEST_P(ToeOfAnySize, EndsOnTheStitchCount) {
  for_each_toe([](const ToeInput& input, const Toe& toe) {
    ASSERT_EQ(toe.counts.back(), input.stitches.value());
  });
}

TEST_P(ToeOfAnySize, BeginsWithAPlainRoundOfTheCastOn) {
  for_each_toe([](const ToeInput&, const Toe& toe) {
    ASSERT_EQ(toe.counts.front(), toe.cast_on.value());
    ASSERT_GE(toe.cast_on.value(), 8);
  });
}

TEST_P(ToeOfAnySize, StepsByNothingOrByFour) {
  for_each_toe([](const ToeInput&, const Toe& toe) {
    for (const int step : steps_of(toe)) ASSERT_TRUE(step == 0 || step == 4) << step;
  });
}

TEST_P(ToeOfAnySize, NeverIncreasesInMoreThanTwoRoundsTogether) {
  for_each_toe([](const ToeInput&, const Toe& toe) { ASSERT_LE(most_together(toe), 2); });
}

TEST_P(ToeOfAnySize, CountsItsIncreaseRounds) {
  for_each_toe([](const ToeInput&, const Toe& toe) {
    const std::vector<int> steps = steps_of(toe);
    ASSERT_EQ(std::count(steps.begin(), steps.end(), 4), toe.increase_rounds);
  });
}

INSTANTIATE_TEST_SUITE_P(BothShapes, ToeOfAnySize, testing::Values(ToeShape::round, ToeShape::even),
                         [](const testing::TestParamInfo<ToeShape>& shape) {
                           return shape.param == ToeShape::round ? "Round" : "Even";
                         });

TEST(ToeRound, PlainIsAllKnitInBothHalves) {
  EXPECT_EQ(stitch_by_stitch(toe_round(Stitches(10), ToeSides::none).first), "kkkkk");
  EXPECT_EQ(stitch_by_stitch(toe_round(Stitches(10), ToeSides::none).second), "kkkkk");
}

TEST(ToeRound, AnIncreaseRoundMakesOneAtEachEdgeOfEachHalf) {
  // k1, M1R, k to the last stitch, M1L, k1: worked on 5 stitches, leaves 7.
  const RoundLine line = toe_round(Stitches(10), ToeSides::both);
  EXPECT_EQ(stitch_by_stitch(line.first), "k>kkk<k");
  EXPECT_EQ(line.second, line.first);
}

TEST(ToeRound, AnIncreaseRoundAddsFour) {
  for (int before = 8; before <= 396; before += 2) {
    const RoundLine line = toe_round(Stitches(before), ToeSides::both);
    EXPECT_EQ((stitches_after(line.first) + stitches_after(line.second)).value(), before + 4);
    const std::string stitches = stitch_by_stitch(line);
    EXPECT_EQ(std::count(stitches.begin(), stitches.end(), 'k'), before);
  }
}

}  // namespace
}  // namespace twinround

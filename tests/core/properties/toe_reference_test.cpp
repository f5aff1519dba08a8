// The toe again, worked another way: increase by increase, in whole numbers, instead of round by
// round in real ones.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

#include "toe.h"

namespace twinround {
namespace {

// Hundredths of the count that the tip is cast on with; the candidates tried one by one.
int reference_cast_on(int n, int tip_hundredths) {
  int best = n;
  for (int candidate = n; candidate >= 8; candidate -= 4) {
    const int off = std::abs(100 * candidate - tip_hundredths * n);
    const int best_off = std::abs(100 * best - tip_hundredths * n);
    if (off < best_off) best = candidate;  // from the top down, so a tie stays up
  }
  return best;
}

// The first round in which the outline has come half a step past increase i (of `all`, from 1),
// that is, ideal - before >= 2 where before = n0 + 4 (i - 1) and the outline climbs 4 x all. Even:
// (j - 1)/(R - 1) >= (2 i - 1)/(2 all). Round: the same of sqrt(1 - ((R - j)/(R - 1))^2), squared
// on both sides to stay whole.
int due(ToeShape shape, int i, int all, int rounds) {
  const std::int64_t half_steps = std::int64_t{2} * i - 1;
  const std::int64_t of = std::int64_t{2} * all;
  const std::int64_t last = rounds - 1;
  for (std::int64_t j = 2; j <= rounds; ++j) {
    const std::int64_t gone = j - 1;
    const std::int64_t to_go = rounds - j;
    const bool there = shape == ToeShape::even ? gone * of >= half_steps * last
                                               : (last * last - to_go * to_go) * of * of >=
                                                     half_steps * half_steps * last * last;
    if (there) return static_cast<int>(j);
  }
  return rounds;
}

// Rounds that m increases take when two are worked together and then one plain.
int rounds_of_increases(int m) {
  return m == 0 ? 0 : m + (m - 1) / 2;
}

std::vector<int> reference_toe(ToeShape shape, int n, int n0, int asked_rounds) {
  const int all = (n - n0) / 4;
  const int rounds = std::max(1 + rounds_of_increases(all), asked_rounds);
  std::vector<int> increase_rounds;
  for (int i = 1; i <= all; ++i) {
    // The last moment: were it left for a round later, too few rounds would follow.
    const int last_moment = rounds - rounds_of_increases(all - i + 1) + 1;
    int round = std::min(due(shape, i, all, rounds), last_moment);
    const std::size_t done = increase_rounds.size();
    if (done >= 1) round = std::max(round, increase_rounds[done - 1] + 1);
    const bool third = done >= 2 && increase_rounds[done - 1] == round - 1 &&
                       increase_rounds[done - 2] == round - 2;
    increase_rounds.push_back(third ? round + 1 : round);
  }
  std::vector<int> counts;
  for (int j = 1; j <= rounds; ++j) {
    const auto worked = std::count_if(increase_rounds.begin(), increase_rounds.end(),
                                      [j](int round) { return round <= j; });
    counts.push_back(n0 + 4 * static_cast<int>(worked));
  }
  return counts;
}

TEST(ToeReference, IsTheHandWorkedOne) {
  EXPECT_EQ(reference_toe(ToeShape::round, 40, 16, 17),
            (std::vector<int>{16, 20, 24, 24, 28, 32, 32, 36, 36, 36, 40, 40, 40, 40, 40, 40, 40}));
  EXPECT_EQ(reference_toe(ToeShape::even, 40, 16, 17),
            (std::vector<int>{16, 16, 20, 20, 24, 24, 24, 28, 28, 28, 32, 32, 36, 36, 36, 40, 40}));
}

TEST(ToeReference, AgreesOverEveryCountTipAndLength) {
  int compared = 0;
  for (int n = 8; n <= 400; n += n < 160 ? 2 : 14) {
    for (const int tip : {10, 25, 33, 40, 50, 66, 100}) {
      for (int asked = 0; asked <= 140; asked += n < 100 ? 1 : 7) {
        for (const ToeShape shape : {ToeShape::round, ToeShape::even}) {
          ToeInput input;
          input.stitches = Stitches(n);
          input.foot_length = Length::from_mm(4 * asked);  // share 0.25 of it, one round a mm
          input.gauge = RoundGauge::per_mm(1);
          input.tip_share = tip / 100.0;
          input.shape = shape;
          const Toe toe = shape_toe(input);
          const int n0 = reference_cast_on(n, tip);
          SCOPED_TRACE(std::to_string(n) + " stitches, tip 0." + std::to_string(tip) + ", " +
                       std::to_string(asked) + " rounds asked, " +
                       (shape == ToeShape::round ? "round" : "even"));
          ASSERT_EQ(toe.cast_on.value(), n0);
          ASSERT_EQ(toe.counts, reference_toe(shape, n, n0, asked));
          ++compared;
        }
      }
    }
  }
  RecordProperty("compared", compared);
  EXPECT_GT(compared, 50000);
}

}  // namespace
}  // namespace twinround

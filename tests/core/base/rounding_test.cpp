#include "rounding.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

namespace twinround {
namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr int kMost = 1'000'000'000;

// Clearly inside and clearly outside of a tie (1e-9).
constexpr double kHair = 1e-10;
constexpr double kStep = 1e-8;

TEST(Rounding, ClearlyAboveMeansByMoreThanATie) {
  EXPECT_TRUE(clearly_above(2.0, 1.0));
  EXPECT_TRUE(clearly_above(1.0 + kStep, 1.0));
  EXPECT_FALSE(clearly_above(1.0 + kHair, 1.0));
  EXPECT_FALSE(clearly_above(1.0, 1.0));
  EXPECT_FALSE(clearly_above(1.0 - kStep, 1.0));
}

TEST(Rounding, AtLeastForgivesATie) {
  EXPECT_TRUE(at_least(2.0, 1.0));
  EXPECT_TRUE(at_least(1.0, 1.0));
  EXPECT_TRUE(at_least(1.0 - kHair, 1.0));
  EXPECT_FALSE(at_least(1.0 - kStep, 1.0));
  EXPECT_FALSE(at_least(0.0, 1.0));
}

TEST(Rounding, ATieIsOneBillionth) {
  EXPECT_EQ(kTie, 1e-9);
  EXPECT_FALSE(clearly_above(kTie, 0.0));
  EXPECT_TRUE(at_least(-kTie, 0.0));
  EXPECT_TRUE(clearly_above(1.1e-9, 0.0));
  EXPECT_FALSE(clearly_above(0.9e-9, 0.0));
  EXPECT_TRUE(at_least(-0.9e-9, 0.0));
  EXPECT_FALSE(at_least(-1.1e-9, 0.0));
}

TEST(Rounding, NothingIsComparableWithNotANumber) {
  EXPECT_FALSE(clearly_above(kNan, 1.0));
  EXPECT_FALSE(clearly_above(1.0, kNan));
  EXPECT_FALSE(at_least(kNan, 1.0));
  EXPECT_FALSE(at_least(1.0, kNan));
}

struct Case {
  double x = 0;
  int expected = 0;
};

TEST(Rounding, HalvesGoUpAlsoBelowNothing) {
  const std::vector<Case> cases = {
      {0.0, 0},         {0.4, 0},           {0.5, 1},           {0.6, 1},         {1.5, 2},
      {2.5, 3},         {60.75, 61},        {-0.4, 0},          {-0.5, 0},        {-0.6, -1},
      {-1.5, -1},       {-2.5, -2},         {-2.6, -3},         {2.5 - kHair, 3}, {2.5 - kStep, 2},
      {2.5 + kStep, 3}, {-2.5 - kHair, -2}, {-2.5 - kStep, -3},
  };
  for (const Case& c : cases) EXPECT_EQ(round_half_up(c.x), c.expected) << "x = " << c.x;
}

TEST(Rounding, FloorCountsAHairUnderAsTheWholeNumber) {
  const std::vector<Case> cases = {
      {0.0, 0},         {0.999, 0},         {1.0, 1},         {3.0 - kHair, 3},
      {3.0 - kStep, 2}, {3.9, 3},           {3.0 + kStep, 3}, {-0.5, -1},
      {-1.0, -1},       {-1.0 - kHair, -1}, {-1.5, -2},       {-1.0 - kStep, -2},
  };
  for (const Case& c : cases) EXPECT_EQ(floor_count(c.x), c.expected) << "x = " << c.x;
}

TEST(Rounding, CeilCountsAHairOverAsTheWholeNumber) {
  const std::vector<Case> cases = {
      {0.0, 0},         {0.001, 1},         {1.0, 1},         {3.0 + kHair, 3},
      {3.0 + kStep, 4}, {2.1, 3},           {3.0 - kStep, 3}, {-0.5, 0},
      {-1.0, -1},       {-1.0 + kHair, -1}, {-1.5, -1},       {-1.0 + kStep, 0},
  };
  for (const Case& c : cases) EXPECT_EQ(ceil_count(c.x), c.expected) << "x = " << c.x;
}

TEST(Rounding, NotANumberGivesNothing) {
  EXPECT_EQ(round_half_up(kNan), 0);
  EXPECT_EQ(floor_count(kNan), 0);
  EXPECT_EQ(ceil_count(kNan), 0);
}

TEST(Rounding, NumbersPastABillionStopThere) {
  using Rule = int (*)(double);
  for (const Rule rule : {&round_half_up, &floor_count, &ceil_count}) {
    EXPECT_EQ(rule(999'999'999.0), 999'999'999);
    EXPECT_EQ(rule(1e9), kMost);
    EXPECT_EQ(rule(1e9 + 1), kMost);
    EXPECT_EQ(rule(1e300), kMost);
    EXPECT_EQ(rule(kInfinity), kMost);
    EXPECT_EQ(rule(-999'999'999.0), -999'999'999);
    EXPECT_EQ(rule(-1e9), -kMost);
    EXPECT_EQ(rule(-1e9 - 1), -kMost);
    EXPECT_EQ(rule(-kInfinity), -kMost);
  }
}

struct LatticeCase {
  double x = 0;
  int step = 1;
  int offset = 0;
  int tie_down = 0;
  int tie_up = 0;
};

TEST(Rounding, TheNearestOfALatticeTakesTheNamedSideOfATie) {
  const std::vector<LatticeCase> cases = {
      // x            step offset down up
      {40.4, 8, 0, 40, 40},  // the worked count: 228 mm x 0.9 x 20 st over 4 in
      {40.0, 4, 0, 40, 40},
      {42.0, 4, 0, 40, 44},
      {42.0 + kHair, 4, 0, 40, 44},
      {42.0 - kHair, 4, 0, 40, 44},
      {42.0 + kStep, 4, 0, 44, 44},
      {42.0 - kStep, 4, 0, 40, 40},
      {44.0 - kHair, 4, 0, 44, 44},
      {16.0, 4, 2, 14, 18},  // a cast-on that is 2 modulo 4
      {17.6, 4, 0, 16, 16},
      {17.6, 4, 2, 18, 18},
      {-3.0, 4, 0, -4, -4},
      {-2.0, 4, 0, -4, 0},
      {-1.0, 4, 1, -3, 1},
      {5.0, 4, 100, 4, 4},
      {7.5, 1, 0, 7, 8},
      {0.0, 400, 0, 0, 0},
  };
  for (const LatticeCase& c : cases) {
    SCOPED_TRACE(testing::Message() << c.x << " on " << c.offset << " + m x " << c.step);
    EXPECT_EQ(nearest_on_lattice(c.x, c.step, c.offset, Tie::down), c.tie_down);
    EXPECT_EQ(nearest_on_lattice(c.x, c.step, c.offset, Tie::up), c.tie_up);
  }
}

// An independent reading of the same sentence: walk the lattice, fifty steps either way, and keep
// the nearest.
int nearest_by_walking(double x, int step, int offset, Tie tie) {
  int best = offset - 50 * step;
  for (int m = -49; m <= 50; ++m) {
    const int candidate = offset + m * step;
    const double gain = std::abs(best - x) - std::abs(candidate - x);
    if (gain > 1e-9 || (gain >= -1e-9 && tie == Tie::up)) best = candidate;
  }
  return best;
}

TEST(Rounding, TheNearestOfALatticeIsWhatWalkingItFinds) {
  for (const int step : {1, 2, 3, 4, 7, 8, 24}) {
    for (const int offset : {-5, 0, 1, 2}) {
      for (int tenths = -200; tenths <= 200; ++tenths) {
        const double x = tenths / 10.0;
        SCOPED_TRACE(testing::Message() << x << " on " << offset << " + m x " << step);
        for (const Tie tie : {Tie::down, Tie::up}) {
          ASSERT_EQ(nearest_on_lattice(x, step, offset, tie),
                    nearest_by_walking(x, step, offset, tie));
        }
      }
    }
  }
}

TEST(Rounding, TheNearestMultipleIsTheLatticeThatStartsAtNothing) {
  EXPECT_EQ(nearest_multiple(40.4, 4, Tie::down), 40);
  EXPECT_EQ(nearest_multiple(42.0, 4, Tie::down), 40);
  EXPECT_EQ(nearest_multiple(42.0, 4, Tie::up), 44);
  EXPECT_EQ(nearest_multiple(45.0, 7, Tie::down), 42);
  EXPECT_EQ(nearest_multiple(46.0, 7, Tie::down), 49);
  EXPECT_EQ(nearest_multiple(-5.0, 4, Tie::down), -4);
}

TEST(Rounding, ALatticePointSaturatesWithTheRealItIsNearTo) {
  EXPECT_EQ(nearest_multiple(1e12, 4, Tie::down), 1000000000);
  EXPECT_EQ(nearest_multiple(-1e12, 4, Tie::down), -1000000000);
  EXPECT_EQ(nearest_multiple(1e12, 7, Tie::down),
            1000000001);  // 142857143 x 7, a step past the limit
  EXPECT_EQ(nearest_on_lattice(-1e300, 4, 2, Tie::up), -999999998);
}

TEST(Rounding, NoLatticePointIsNearestToNotANumberSoTheFirstOnesServe) {
  EXPECT_EQ(nearest_on_lattice(kNan, 4, 2, Tie::down), 2);
  EXPECT_EQ(nearest_on_lattice(kNan, 4, 2, Tie::up), 6);
}

}  // namespace
}  // namespace twinround

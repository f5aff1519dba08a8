#include "allotment.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

#include "drive_examples.h"

namespace twinround {
namespace {

using Ints = std::vector<int>;

TEST(Allotment, GivesWhatIsLeftToTheLargestRemainders) {
  EXPECT_EQ(allot(10, {0.5, 0.3, 0.2}), (Ints{5, 3, 2}));
  EXPECT_EQ(allot(10, {0.46, 0.33, 0.21}), (Ints{5, 3, 2}));  // 4.6 3.3 2.1
  EXPECT_EQ(allot(1, {0.2, 0.5, 0.3}), (Ints{0, 1, 0}));
  EXPECT_EQ(allot(0, {0.5, 0.5}), (Ints{0, 0}));
  EXPECT_EQ(allot(7, {2}), (Ints{7}));
}

TEST(Allotment, GivesATieToTheLargerShareThenToTheFirst) {
  EXPECT_EQ(allot(5, {0.5, 0.5}), (Ints{3, 2}));
  EXPECT_EQ(allot(2, {1, 3}), (Ints{0, 2}));  // 0.5 and 1.5
  EXPECT_EQ(allot(4, {1, 1, 1, 1, 1, 1}), (Ints{1, 1, 1, 1, 0, 0}));
}

TEST(Allotment, OfNothingIsNothing) {
  EXPECT_EQ(allot(5, {0, 0}), (Ints{0, 0}));
  EXPECT_EQ(allot(5, {0, 0.1}), (Ints{0, 5}));
  EXPECT_TRUE(allot(5, {}).empty());
}

TEST(Allotment, LosesNoPairAndNobodyGetsAPairMoreOrLessThanIsDue) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  test::Dice dice(first);
  for (int i = 0; i < 3000; ++i) {
    std::vector<double> shares;
    for (int n = dice.whole(1, 12); n > 0; --n) shares.push_back(dice.between(0.001, 1));
    const int pairs = dice.whole(0, 2000);
    const std::vector<int> given = allot(pairs, shares);
    ASSERT_EQ(std::accumulate(given.begin(), given.end(), 0), pairs);
    const double all = std::accumulate(shares.begin(), shares.end(), 0.0);
    for (std::size_t j = 0; j < shares.size(); ++j) {
      ASSERT_LT(std::abs(given[j] - pairs * shares[j] / all), 1);
    }
  }
}

}  // namespace
}  // namespace twinround

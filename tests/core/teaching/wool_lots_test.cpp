#include "wool_lots.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <numeric>

#include "drive_examples.h"

namespace twinround {
namespace {

using Ints = std::vector<int>;

std::vector<Length> metres(const std::vector<double>& values) {
  std::vector<Length> lengths;
  for (const double value : values) lengths.push_back(Length::from_m(value));
  return lengths;
}

PairsWanted wanted(int pairs, double m) {
  return {pairs, Length::from_m(m)};
}

TEST(WoolLots, MakeAllPairsWhereThereIsRoom) {
  const LotsMake make = pairs_from(metres({1000}), {wanted(2, 150), wanted(3, 200)});
  EXPECT_EQ(make.in_all, 5);
  EXPECT_EQ(make.at_most, 5);
  EXPECT_EQ(make.pairs, (Ints{2, 3}));
  EXPECT_NEAR(make.lots[0].left.m(), 100, 1e-9);
  EXPECT_EQ(make.lots[0].alone, (Ints{6, 5}));
}

TEST(WoolLots, FillALotToTheLastMetreButNotPastIt) {
  EXPECT_EQ(pairs_from(metres({400}), {wanted(9, 200)}).in_all, 2);
  EXPECT_EQ(pairs_from(metres({399.99}), {wanted(9, 200)}).in_all, 1);
}

TEST(WoolLots, MakeNoPairOutOfTwoLots) {
  EXPECT_EQ(pairs_from(metres({150, 150}), {wanted(1, 200)}).in_all, 0);
  EXPECT_EQ(pairs_from({}, {wanted(1, 200)}).in_all, 0);
}

// 300 + 300 m for 200, 200, 100, 100 m: greedily two long ones leave 100 each; greedily short ones
// first leave 100 and 300, and one long pair fewer.
TEST(WoolLots, FindTheFillingThatShortestFirstMisses) {
  const LotsMake make = pairs_from(metres({300, 300}), {wanted(2, 100), wanted(2, 200)});
  EXPECT_EQ(make.in_all, 4);
  EXPECT_EQ(make.pairs, (Ints{2, 2}));
}

// What is left goes into longer pairs: five of 100 m, or four and one of 180.
TEST(WoolLots, GiveRoomThatIsLeftToLongerPairs) {
  const LotsMake make = pairs_from(metres({580}), {wanted(5, 100), wanted(5, 180)});
  EXPECT_EQ(make.in_all, 5);
  EXPECT_EQ(make.pairs, (Ints{4, 1}));
  EXPECT_NEAR(make.lots[0].left.m(), 0, 1e-9);
}

// Every way to put every pair into some lot or none.
int most_by_trying_all(const std::vector<double>& lots, const std::vector<double>& pairs) {
  std::vector<double> left = lots;
  int most = 0;
  const std::function<void(std::size_t, int)> place = [&](std::size_t at, int made) {
    most = std::max(most, made);
    if (at == pairs.size()) return;
    place(at + 1, made);
    for (double& lot : left) {
      if (lot < pairs[at]) continue;
      lot -= pairs[at];
      place(at + 1, made + 1);
      lot += pairs[at];
    }
  };
  place(0, 0);
  return most;
}

TEST(WoolLots, MakeAsManyPairsAsTheBestOfAllFillings) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  for (std::uint32_t i = 0; i < 300; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    test::Dice dice(first + i);
    std::vector<double> lots, singles;
    std::vector<PairsWanted> sizes;
    for (int n = dice.whole(1, 3); n > 0; --n) lots.push_back(dice.whole(80, 700));
    for (int n = dice.whole(1, 3); n > 0; --n) {
      sizes.push_back(wanted(dice.whole(0, 3), dice.whole(90, 300)));
      singles.insert(singles.end(), static_cast<std::size_t>(sizes.back().pairs),
                     sizes.back().yarn.m());
    }
    const LotsMake make = pairs_from(metres(lots), sizes);
    ASSERT_EQ(make.in_all, most_by_trying_all(lots, singles));
    ASSERT_EQ(make.at_most, make.in_all);
    ASSERT_EQ(std::accumulate(make.pairs.begin(), make.pairs.end(), 0), make.in_all);
    for (std::size_t size = 0; size < sizes.size(); ++size) {
      ASSERT_LE(make.pairs[size], sizes[size].pairs);
    }
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
      double used = 0;
      for (std::size_t size = 0; size < sizes.size(); ++size) {
        used += make.lots[lot].pairs[size] * sizes[size].yarn.m();
      }
      ASSERT_NEAR(make.lots[lot].left.m(), lots[lot] - used, 1e-6);
      ASSERT_GE(make.lots[lot].left.m(), -1e-6);
    }
  }
}

}  // namespace
}  // namespace twinround

#include "own_stripes.h"

#include <gtest/gtest.h>

#include "ten_rounds.h"

namespace twinround {
namespace {

using test::ten_rounds;

TEST(OwnStripes, TakeTheirRoundsTheCastOnAndTheBindOff) {
  // 3 of A, 2 of B, over ten rounds: A 1-3, B 4-5, A 6-8, B 9-10.
  const OwnStripes own = own_stripes(ten_rounds(), {{0, 3}, {1, 2}}, 200);
  ASSERT_EQ(own.bands.size(), 4U);
  EXPECT_EQ(own.bands[1].from.round, 4);
  EXPECT_EQ(own.bands[1].to.round, 5);
  EXPECT_EQ(own.bands[1].to.share, 1);
  EXPECT_EQ(own.bands[3].to.round, 10);
  EXPECT_EQ(own.changes, 3);
  ASSERT_EQ(own.colours.size(), 2U);
  // A: 0.3 before the first round and six rounds; B: four rounds and 0.5 behind them.
  EXPECT_NEAR(own.colours[0].pair.m(), 2 * 0.9, 1e-9);
  EXPECT_NEAR(own.colours[1].pair.m(), 2 * 0.9, 1e-9);
  EXPECT_NEAR(own.colours[0].pair_mass.g(), 0.36, 1e-9);
  EXPECT_EQ(own.colours[0].bands, 2);
  // Three changes, two tails of 0.2 each, two socks.
  EXPECT_NEAR(own.more_if_cut.m(), 2.4, 1e-9);
}

TEST(OwnStripes, OfOneColourNextToEachOtherAreOne) {
  const OwnStripes own = own_stripes(ten_rounds(), {{0, 3}, {1, 2}, {0, 1}}, 200);
  // A 1-3, B 4-5, A 6 and 7-9, B 10.
  ASSERT_EQ(own.bands.size(), 4U);
  EXPECT_EQ(own.bands[2].from.round, 6);
  EXPECT_EQ(own.bands[2].to.round, 9);
}

TEST(OwnStripes, ThatNeverChangeAreOneBand) {
  for (const int rounds : {1, 9, 10, 11, 2000}) {
    const OwnStripes own = own_stripes(ten_rounds(), {{4, rounds}}, 200);
    ASSERT_EQ(own.bands.size(), 1U) << rounds;
    EXPECT_NEAR(own.bands[0].yarn.m(), 1.8, 1e-9);
    EXPECT_EQ(own.more_if_cut.m(), 0);
  }
}

TEST(OwnStripes, LongerThanTheSockEndWithIt) {
  EXPECT_EQ(own_stripes(ten_rounds(), {{0, 9}, {1, 40}}, 200).bands.size(), 2U);
  EXPECT_EQ(own_stripes(ten_rounds(), {{0, 10}, {1, 40}}, 200).bands.size(), 1U);
}

}  // namespace
}  // namespace twinround

#include "lost_count.h"

#include <gtest/gtest.h>

#include "spiral.h"

namespace twinround {
namespace {

constexpr int kMost = 300;

// Every rib up to 12 by 12, moved every 1 to 12 rounds.
template <class Look>
void at_every_rib(Look look) {
  for (int knit = 1; knit <= 12; ++knit) {
    for (int purl = 1; purl <= 12; ++purl) {
      for (int shift = 1; shift <= 12; ++shift) look(Rib{knit, purl, shift, Lean::left});
    }
  }
}

TEST(LostCount, IsTheExactInverseOfTheSpiralForEveryRoundOfEveryRib) {
  at_every_rib([](const Rib& rib) {
    for (int rounds = 1; rounds <= kMost; ++rounds) {
      const SeenRib seen = seen_after(rib, rounds);
      ASSERT_EQ(seen.columns, offset_in_round(rib, rounds - 1));
      ASSERT_EQ(rounds_seen(rib, seen), rounds);
    }
  });
}

TEST(LostCount, FindsEveryRoundThatLooksAlikeAndNoOther) {
  at_every_rib([](Rib rib) {
    for (const Lean lean : {Lean::left, Lean::right}) {
      rib.lean = lean;
      const int rounds = 57;
      const SeenRib seen = seen_after(rib, rounds);
      const int place = first_place(rib, seen.columns);
      const std::vector<int> found = rounds_of_phase(rib, place, seen.since, kMost);
      std::vector<int> expected;
      for (int r = 1; r <= kMost; ++r) {
        const SeenRib other = seen_after(rib, r);
        if (other.since == seen.since && first_place(rib, other.columns) == place)
          expected.push_back(r);
      }
      ASSERT_EQ(found, expected);
    }
  });
}

TEST(LostCount, OfLooksAlikeRoundsLieAPeriodApart) {
  const Rib rib{2, 2, 4, Lean::left};
  // Repeat 4, moved every 4 rounds: 16 rounds until it stands where it began.
  EXPECT_EQ(period(rib).value(), 16);
  EXPECT_EQ(rounds_of_phase(rib, 0, 3, 60), (std::vector<int>{3, 19, 35, 51}));
}

TEST(LostCount, ByHandInTheWorkedExample) {
  // k2, p2 moved every 4 rounds: 5 columns moved and 2 rounds since make round 22 of the rib.
  const Rib rib{2, 2, 4, Lean::left};
  EXPECT_EQ(rounds_seen(rib, {5, 2}), 22);
  EXPECT_EQ(rounds_seen(rib, {0, 1}), 1);
}

TEST(LostCount, HasNoAnswerWhereTheRibShowsNone) {
  EXPECT_FALSE(rounds_seen({2, 2, 0, Lean::left}, {0, 1}));
  EXPECT_TRUE(rounds_of_phase({2, 2, 0, Lean::left}, 0, 1, kMost).empty());
  const Rib rib{2, 2, 4, Lean::left};
  EXPECT_FALSE(rounds_seen(rib, {1, 0}));
  EXPECT_TRUE(rounds_seen(rib, {1, 4}));
  EXPECT_FALSE(rounds_seen(rib, {1, 5}));
  EXPECT_FALSE(rounds_seen(rib, {-1, 1}));
}

TEST(LostCount, TwoSocksApartSayWhichHasMore) {
  EXPECT_EQ(rounds_apart(41, 40), 1);
  EXPECT_EQ(rounds_apart(40, 41), -1);
  EXPECT_EQ(rounds_apart(40, 40), 0);
}

TEST(LostCount, AMisstepIsUnpickedOrCuredInPlace) {
  // 40 stitches in k2, p2: ten knit ribs a sock with two edges each, two socks: 40 columns.
  const WaysOut ways = ways_out({3, 4, Stitches(40)});
  EXPECT_EQ(ways.rounds_to_unpick, 3);
  EXPECT_EQ(ways.stitches_to_unpick, 240);
  EXPECT_EQ(ways.columns_to_hook, 40);
  EXPECT_EQ(ways.stitches_to_hook, 120);
}

}  // namespace
}  // namespace twinround

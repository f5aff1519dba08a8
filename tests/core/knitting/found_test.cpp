#include "found.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "lost_count.h"
#include "spiral.h"

namespace twinround {
namespace {

constexpr int kToe = 17;
constexpr int kRib = 95;
constexpr int kCuff = 8;

PairShape pair_of(Rib rib, int stitches = 40) {
  return {rib, Stitches(stitches), kToe, kRib, kRib, kCuff};
}

Seen columns(int moved, int since) {
  Seen seen;
  seen.columns = moved;
  seen.since = since;
  return seen;
}

Seen place(int of_repeat, int since) {
  Seen seen;
  seen.place = of_repeat;
  seen.since = since;
  return seen;
}

// Knit or purl, stitch by stitch.
std::vector<Work> spread(const HalfLine& half) {
  std::vector<Work> work;
  for (const Run& run : half)
    work.insert(work.end(), static_cast<std::size_t>(run.times), run.work);
  return work;
}

TEST(Found, CountsInTheToeUpToItsLastRound) {
  Seen seen;
  seen.in_toe = true;
  for (const int rounds : {0, 1, kToe}) {
    seen.toe_rounds = rounds;
    EXPECT_EQ(find_round(pair_of({}), seen).likely, rounds);
  }
  seen.toe_rounds = kToe + 1;
  EXPECT_EQ(find_round(pair_of({}), seen).fault, SeenFault::beyond_toe);
}

TEST(Found, ByHandInTheWorkedExample) {
  // k2, p2 moved every 4 rounds on a toe of 17: 9 moves and 4 rounds since are rib round 40.
  EXPECT_EQ(find_round(pair_of({}), columns(9, 4)).likely, 57);
  EXPECT_EQ(find_round(pair_of({}), columns(9, 5)).fault, SeenFault::too_many_since);
  EXPECT_EQ(find_round(pair_of({}), columns(10, 1)).likely, 58);
  // 95 rounds: the last is the third after the 23rd move, and the cuff's 8 go straight on.
  EXPECT_EQ(find_round(pair_of({}), columns(23, 3)).likely, 112);
  EXPECT_EQ(find_round(pair_of({}), columns(23, 4)).likely, 113);
  EXPECT_EQ(find_round(pair_of({}), columns(23, 11)).likely, 120);
  EXPECT_EQ(find_round(pair_of({}), columns(23, 12)).fault, SeenFault::beyond_cuff);
  EXPECT_EQ(find_round(pair_of({}), columns(22, 5)).fault, SeenFault::too_many_since);
  EXPECT_EQ(find_round(pair_of({}), columns(24, 1)).fault, SeenFault::beyond_rib);
}

TEST(Found, OfAPlaceAloneTellsAPeriodApartAndTheNearestOfThem) {
  Seen seen = place(0, 3);
  const Found open = find_round(pair_of({}), seen);
  EXPECT_EQ(open.rounds, (std::vector<int>{20, 36, 52, 68, 84, 100}));
  EXPECT_FALSE(open.likely);
  struct Row {
    int near, likely;
  };
  // Halfway between two the lower one is told.
  for (const Row& row : {Row{0, 20}, Row{50, 52}, Row{60, 52}, Row{61, 68}, Row{400, 100}}) {
    seen.near = row.near;
    EXPECT_EQ(find_round(pair_of({}), seen).likely, row.likely) << row.near;
  }
}

// 23 moves leave the first stitch at place -23 mod 4 = 1.
TEST(Found, OfAPlaceGoesOnIntoTheCuffBehindTheLastMoveAlone) {
  EXPECT_EQ(find_round(pair_of({}), place(1, 11)).rounds, std::vector<int>{120});
  EXPECT_EQ(find_round(pair_of({}), place(1, 4)).rounds.back(), 113);
  EXPECT_EQ(find_round(pair_of({}), place(1, 12)).fault, SeenFault::beyond_cuff);
  EXPECT_EQ(find_round(pair_of({}), place(0, 5)).fault, SeenFault::too_many_since);
  PairShape widened = pair_of({});
  widened.plain_rounds = kRib - 1;
  EXPECT_EQ(find_round(widened, place(1, 11)).fault, SeenFault::too_many_since);
}

TEST(Found, OfAPlaceSaysNothingAboveAWideningRound) {
  PairShape pair = pair_of({});
  pair.plain_rounds = 20;
  const Found found = find_round(pair, place(0, 3));
  EXPECT_EQ(found.rounds, (std::vector<int>{20, 36}));
  pair.plain_rounds = 2;
  EXPECT_EQ(find_round(pair, place(0, 3)).fault, SeenFault::place_not_reached);
  // Columns stay columns.
  EXPECT_EQ(find_round(pair, columns(9, 4)).likely, 57);
}

TEST(Found, OfAStraightRibTakesRoundsSinceItBeganAndNoMoves) {
  const PairShape pair = pair_of({2, 2, 0, Lean::left});
  EXPECT_EQ(find_round(pair, columns(0, 40)).likely, 57);
  EXPECT_EQ(find_round(pair, columns(0, kRib)).likely, kToe + kRib);
  EXPECT_EQ(find_round(pair, columns(0, kRib + kCuff)).likely, kToe + kRib + kCuff);
  EXPECT_EQ(find_round(pair, columns(0, kRib + kCuff + 1)).fault, SeenFault::beyond_cuff);
  EXPECT_EQ(find_round(pair, columns(1, 1)).fault, SeenFault::never_moves);
  EXPECT_EQ(find_round(pair, place(0, 1)).fault, SeenFault::never_moves);
}

// Every rib up to 12 by 12 on every leaning, moved every 1 to 12 rounds: whatever either sock
// shows at any round leads back to it.
TEST(Found, LeadsBackToEveryRoundOfEitherSock) {
  for (int knit = 1; knit <= 12; ++knit) {
    for (int purl = 1; purl <= 12; ++purl) {
      for (int shift = 1; shift <= 12; shift += 11) {
        for (const Lean lean : {Lean::left, Lean::right, Lean::mirrored}) {
          const Rib rib{knit, purl, shift, lean};
          const PairShape pair = pair_of(rib, 2 * (knit + purl));
          for (int r = 0; r < kRib + kCuff; ++r) {
            SeenRib shown = seen_after(rib, std::min(r + 1, kRib));
            shown.since += std::max(0, r + 1 - kRib);
            ASSERT_EQ(find_round(pair, columns(shown.columns, shown.since)).likely, kToe + r + 1);
            Seen seen =
                place(first_place(rib, offset_in_round(rib, std::min(r, kRib - 1))), shown.since);
            for (const bool second : {false, true}) {
              if (second && lean == Lean::mirrored) {
                seen.place = mirrored_place(rib, pair.stitches, seen.place);
              }
              seen.on_second = second;
              const std::vector<int> found = find_round(pair, seen).rounds;
              ASSERT_TRUE(std::find(found.begin(), found.end(), kToe + r + 1) != found.end());
              for (std::size_t i = 1; i < found.size(); ++i) {
                ASSERT_EQ(found[i] - found[i - 1], period(rib).value());
              }
            }
          }
        }
      }
    }
  }
}

// A mirrored pair's second sock is each half of the first read backwards: where its own rounds
// begin, stitch by stitch.
TEST(MirroredPlace, IsWhereTheSecondSocksRoundBegins) {
  for (int knit = 1; knit <= 6; ++knit) {
    for (int purl = 1; purl <= 6; ++purl) {
      const Rib rib{knit, purl, 4, Lean::mirrored};
      for (const int repeats : {2, 5, 8}) {
        const Stitches n((knit + purl) * repeats * ((knit + purl) % 2 + 1));
        for (int offset = 0; offset < rib.repeat(); ++offset) {
          const int first = first_place(rib, offset);
          const int second = mirrored_place(rib, n, first);
          EXPECT_EQ(mirrored_place(rib, n, second), first);
          const std::vector<Work> shown = spread(mirror_round(rib_round(rib, n, offset)).first);
          const std::vector<Work> told = spread(rib_line(knit, purl, n, second).first);
          ASSERT_EQ(shown, told) << "k" << knit << " p" << purl << " of " << n.value();
        }
      }
    }
  }
}

}  // namespace
}  // namespace twinround

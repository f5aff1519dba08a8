#include "spiral.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::stitch_by_stitch;

const Rib kTwoByTwo{2, 2, 4, Lean::left};

std::string halves(const RoundLine& line) {
  return stitch_by_stitch(line.first) + "|" + stitch_by_stitch(line.second);
}

struct Moved {
  int offset = 0;
  const char* left = "";
  const char* right = "";
};

TEST(Spiral, MovesTheRibOneStitchAnOffset) {
  // Leaning left, stitch i is knit if (i - o) mod 4 < 2; leaning right if (i + o) mod 4 < 2.
  const std::vector<Moved> table = {
      {0, "kkppkk|ppkkpp", "kkppkk|ppkkpp"}, {1, "pkkppk|kppkkp", "kppkkp|pkkppk"},
      {2, "ppkkpp|kkppkk", "ppkkpp|kkppkk"}, {3, "kppkkp|pkkppk", "pkkppk|kppkkp"},
      {4, "kkppkk|ppkkpp", "kkppkk|ppkkpp"}, {7, "kppkkp|pkkppk", "pkkppk|kppkkp"},
  };
  for (const Moved& row : table) {
    SCOPED_TRACE(row.offset);
    EXPECT_EQ(halves(rib_round(kTwoByTwo, Stitches(12), row.offset)), row.left);
    EXPECT_EQ(halves(rib_round(Rib{2, 2, 4, Lean::right}, Stitches(12), row.offset)), row.right);
    // A mirrored pair's first sock leans left.
    EXPECT_EQ(halves(rib_round(Rib{2, 2, 4, Lean::mirrored}, Stitches(12), row.offset)), row.left);
  }
}

TEST(Spiral, UnevenRibsKeepTheirOrder) {
  EXPECT_EQ(halves(rib_round(Rib{3, 2, 4, Lean::left}, Stitches(10), 0)), "kkkpp|kkkpp");
  EXPECT_EQ(halves(rib_round(Rib{3, 2, 4, Lean::left}, Stitches(10), 2)), "ppkkk|ppkkk");
  EXPECT_EQ(halves(rib_round(Rib{3, 2, 4, Lean::right}, Stitches(10), 2)), "kppkk|kppkk");
  EXPECT_EQ(halves(rib_round(Rib{1, 3, 4, Lean::left}, Stitches(8), 1)), "pkpp|pkpp");
}

TEST(Spiral, OffsetGrowsByOneEveryShift) {
  const Rib rib{2, 2, 4, Lean::left};
  const std::vector<int> expected = {0, 0, 0, 0, 1, 1, 1, 1, 2};
  for (int r = 0; r < static_cast<int>(expected.size()); ++r) {
    EXPECT_EQ(offset_in_round(rib, r), expected[static_cast<std::size_t>(r)]) << "round " << r;
  }
  EXPECT_EQ(offset_in_round(Rib{2, 2, 1, Lean::left}, 7), 7);
  EXPECT_EQ(offset_in_round(Rib{2, 2, 40, Lean::left}, 39), 0);
  EXPECT_EQ(offset_in_round(Rib{2, 2, 40, Lean::left}, 40), 1);
}

TEST(Spiral, AStraightRibNeverMoves) {
  const Rib straight{2, 2, 0, Lean::left};
  for (const int r : {0, 1, 500}) EXPECT_EQ(offset_in_round(straight, r), 0);
  EXPECT_EQ(period(straight).value(), 1);
}

TEST(Spiral, ComesRoundAfterRepeatTimesShift) {
  EXPECT_EQ(period(kTwoByTwo).value(), 16);
  EXPECT_EQ(period(Rib{3, 2, 4, Lean::left}).value(), 20);
  EXPECT_EQ(period(Rib{1, 1, 1, Lean::left}).value(), 2);
  EXPECT_EQ(period(Rib{12, 12, 40, Lean::left}).value(), 960);
}

TEST(Spiral, MirrorReadsEachHalfBackwards) {
  const RoundLine line = rib_round(kTwoByTwo, Stitches(12), 1);
  EXPECT_EQ(halves(line), "pkkppk|kppkkp");
  EXPECT_EQ(halves(mirror_round(line)), "kppkkp|pkkppk");
}

TEST(Spiral, AMirroredTwiceIsItself) {
  for (int offset = 0; offset < 5; ++offset) {
    const RoundLine line = rib_round(Rib{3, 2, 4, Lean::left}, Stitches(50), offset);
    EXPECT_EQ(mirror_round(mirror_round(line)), line);
  }
}

TEST(Spiral, TheMirrorLeansRight) {
  // One shift on, the first sock's rib stands one stitch later in knitting order, its mirror's one
  // stitch earlier.
  for (int offset = 0; offset < 4; ++offset) {
    const RoundLine here = mirror_round(rib_round(kTwoByTwo, Stitches(16), offset));
    const RoundLine next = mirror_round(rib_round(kTwoByTwo, Stitches(16), offset + 1));
    std::string moved_back = stitch_by_stitch(here);
    std::rotate(moved_back.begin(), moved_back.begin() + 1, moved_back.end());
    EXPECT_EQ(stitch_by_stitch(next), moved_back) << offset;
  }
}

struct Leaning {
  int shift = 0;
  double degrees = 0;
};

TEST(Spiral, LeansByTheShapeOfAStitch) {
  // atan(g_r/(g_s x shift)), with 1.4 rounds to a stitch: atan 1.4 = 54.462, atan 0.7 = 34.992,
  // atan 0.35 = 19.290, atan 0.035 = 2.005.
  const StitchGauge stitches = StitchGauge::per(20, mm(101.6));
  const RoundGauge rounds = RoundGauge::per(28, mm(101.6));
  for (const Leaning& row :
       std::vector<Leaning>{{1, 54.462}, {2, 34.992}, {4, 19.290}, {40, 2.005}, {0, 0}}) {
    const Rib rib{2, 2, row.shift, Lean::left};
    EXPECT_NEAR(pitch(rib, stitches, rounds).degrees(), row.degrees, 5e-4) << row.shift;
  }
}

TEST(Spiral, OneByOneLeansNowhere) {
  for (const int shift : {0, 1, 2, 4}) {
    const Rib rib{1, 1, shift, Lean::left};
    EXPECT_FALSE(rib.leans());
    EXPECT_EQ(pitch(rib, StitchGauge::per_mm(0.2), RoundGauge::per_mm(0.28)).degrees(), 0);
    // Left and right are the same thing.
    for (int offset = 0; offset < 3; ++offset) {
      EXPECT_EQ(rib_round(rib, Stitches(40), offset),
                rib_round(Rib{1, 1, shift, Lean::right}, Stitches(40), offset));
    }
  }
}

TEST(Rib, IsMossOnlyAsOneByOneMovedEveryRound) {
  EXPECT_TRUE((Rib{1, 1, 1, Lean::left}.is_moss()));
  EXPECT_FALSE((Rib{1, 1, 2, Lean::left}.is_moss()));
  EXPECT_FALSE((Rib{1, 1, 0, Lean::left}.is_moss()));
  EXPECT_FALSE((Rib{2, 2, 1, Lean::left}.is_moss()));
  EXPECT_FALSE((Rib{1, 2, 1, Lean::left}.is_moss()));
}

TEST(Rib, LeansWhenItMovesAndHasADirection) {
  EXPECT_TRUE((Rib{2, 2, 4, Lean::left}.leans()));
  EXPECT_TRUE((Rib{2, 1, 1, Lean::left}.leans()));
  EXPECT_FALSE((Rib{2, 2, 0, Lean::left}.leans()));
  EXPECT_FALSE((Rib{1, 1, 4, Lean::left}.leans()));
}

TEST(Rib, IsTwoByTwoMovedLeftEveryFourRoundsUnlessTold) {
  const Rib rib;
  EXPECT_EQ(rib.knit, 2);
  EXPECT_EQ(rib.purl, 2);
  EXPECT_EQ(rib.rounds_per_shift, 4);
  EXPECT_EQ(rib.lean, Lean::left);
  EXPECT_EQ(rib.repeat(), 4);
}

}  // namespace
}  // namespace twinround

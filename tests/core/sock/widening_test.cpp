#include "widening.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::stitch_by_stitch;

WideRib rib(int knit, int purl, int stitches) {
  return {knit, purl, Stitches(stitches)};
}

TEST(NextWider, GrowsTheNarrowerColumnAndOfTwoAlikeThePurl) {
  struct Row {
    WideRib from;
    WideRib to;
  };
  const std::vector<Row> table = {
      {rib(2, 2, 40), rib(2, 3, 50)},  // 10 repeats
      {rib(2, 3, 50), rib(3, 3, 60)}, {rib(3, 3, 60), rib(3, 4, 70)},
      {rib(1, 1, 40), rib(1, 2, 60)},  // 20 repeats
      {rib(3, 1, 48), rib(3, 2, 60)}, {rib(1, 3, 48), rib(2, 3, 60)},
      {rib(4, 2, 36), rib(4, 3, 42)},
  };
  for (const Row& row : table) {
    const auto wider = next_wider(row.from);
    ASSERT_TRUE(wider.has_value());
    EXPECT_EQ(wider->knit, row.to.knit);
    EXPECT_EQ(wider->purl, row.to.purl);
    EXPECT_EQ(wider->stitches, row.to.stitches);
  }
}

TEST(NextWider, GrowsBothColumnsWhereOneWouldLeaveAnOddCount) {
  // 7 repeats of k3 p3: 42 and 7 are 49, no count; so k4 p4, 56.
  const auto wider = next_wider(rib(3, 3, 42));
  ASSERT_TRUE(wider.has_value());
  EXPECT_EQ(wider->knit, 4);
  EXPECT_EQ(wider->purl, 4);
  EXPECT_EQ(wider->stitches.value(), 56);
  // 15 repeats of k1 p1 are 30: k2 p2, 60.
  EXPECT_EQ(next_wider(rib(1, 1, 30))->stitches.value(), 60);
}

TEST(NextWider, EndsAtTwelveStitchesAColumnAndFourHundredRound) {
  EXPECT_TRUE(next_wider(rib(12, 11, 46)).has_value());
  EXPECT_FALSE(next_wider(rib(12, 12, 48)).has_value());
  EXPECT_TRUE(next_wider(rib(1, 1, 264)).has_value());   // 132 repeats: 396
  EXPECT_FALSE(next_wider(rib(1, 1, 268)).has_value());  // 134 repeats: 402
}

TEST(WideningRound, MakesAStitchAtTheEndOfEachColumnThatGrows) {
  // k2 p2 to k2 p3 from the repeat's start: a purl made behind each two purls.
  const RoundLine purls = widening_round(rib(2, 2, 16), rib(2, 3, 20), 0);
  EXPECT_EQ(stitch_by_stitch(purls.first), "kkpp+kkpp+");
  EXPECT_EQ(stitch_by_stitch(purls.second), "kkpp+kkpp+");
  // k2 p3 to k3 p3: a knit made behind each two knits.
  const RoundLine knits = widening_round(rib(2, 3, 20), rib(3, 3, 24), 0);
  EXPECT_EQ(stitch_by_stitch(knits.first), "kk<pppkk<ppp");
}

TEST(WideningRound, CutsColumnsWhereTheRoundBegins) {
  // The round begins on the second knit (place 1): the half ends inside a column, and the stitch
  // made stands where the column ends.
  const RoundLine round = widening_round(rib(2, 2, 16), rib(2, 3, 20), 1);
  EXPECT_EQ(stitch_by_stitch(round.first), "kpp+kkpp+k");
  // On the last purl (place 3): the first stitch ends its column.
  EXPECT_EQ(stitch_by_stitch(widening_round(rib(2, 2, 16), rib(2, 3, 20), 3).first), "p+kkpp+kkp");
}

TEST(WideningRound, GrowsBothColumnsAtOnce) {
  const RoundLine round = widening_round(rib(1, 1, 10), rib(2, 2, 20), 0);
  EXPECT_EQ(stitch_by_stitch(round.first), "k<p+k<p+k<");
  EXPECT_EQ(stitch_by_stitch(round.second), "p+k<p+k<p+");
}

TEST(PlaceAfter, KeepsTheStitchThatTheRoundBeginsWith) {
  // p at place 2 of k2 p2 is place 2 of k2 p3 still, and place 3 of k3 p3.
  EXPECT_EQ(place_after(rib(2, 2, 16), rib(2, 3, 20), 2), 2);
  EXPECT_EQ(place_after(rib(2, 3, 20), rib(3, 3, 24), 2), 3);
  EXPECT_EQ(place_after(rib(2, 3, 20), rib(3, 3, 24), 1), 1);
}

}  // namespace
}  // namespace twinround

#include "leftovers.h"

#include <gtest/gtest.h>

#include "ten_rounds.h"

namespace twinround {
namespace {

using test::metres;
using test::ten_rounds;

// Lots in metres for the pair, without a margin.
Leftovers lay(const std::vector<double>& lots, double margin = 0) {
  LeftoversInput input;
  for (const double lot : lots) input.lots.push_back(metres(lot));
  input.margin = margin;
  return lay_leftovers(ten_rounds(), input);
}

TEST(OneLot, ThatHoldsThePairDoesItAlone) {
  const struct {
    double lot, margin;
    bool reaches, keeps;
  } rows[] = {{3.6, 0, true, true},      {3.599, 0, false, false}, {3.96, 0.1, true, true},
              {3.959, 0.1, true, false}, {3.6, 0.1, true, false},  {3.599, 0.1, false, false}};
  for (const auto& row : rows) {
    const Leftovers found = lay({row.lot}, row.margin);
    EXPECT_EQ(found.reaches, row.reaches) << row.lot;
    EXPECT_EQ(found.keeps_margin, row.keeps) << row.lot;
    EXPECT_EQ(found.rounds == 10, row.reaches) << row.lot;
    EXPECT_EQ(found.missing.m() > 0, !row.keeps) << row.lot;
    EXPECT_EQ(found.joins, 0);
  }
  const Leftovers found = lay({3.6});
  ASSERT_EQ(found.runs.size(), 1U);
  EXPECT_EQ(found.runs[0].to, 10);
  EXPECT_NEAR(found.runs[0].yarn.m(), 1.8, 1e-9);
  EXPECT_EQ(found.missing.m(), 0);
}

TEST(TwoLots, MeetInTheRibOrWhereAPartEnds) {
  // Half of 1.9 m is 0.95: cast-on 0.1, two tails 0.4, and 0.45 for four rounds. The rest: six
  // rounds, bind-off 0.3, tails 0.4: 1.3 m.
  const Leftovers found = lay({1.9, 2.6});
  ASSERT_TRUE(found.reaches);
  ASSERT_EQ(found.runs.size(), 2U);
  EXPECT_EQ(found.runs[0].lot, 0);
  EXPECT_EQ(found.runs[0].to, 4);
  EXPECT_NEAR(found.runs[0].yarn.m(), 0.9, 1e-9);
  EXPECT_EQ(found.runs[1].from, 5);
  EXPECT_NEAR(found.runs[1].yarn.m(), 1.3, 1e-9);
  // A centimetre less in the second, and it cannot.
  EXPECT_FALSE(lay({1.9, 2.59}).reaches);
}

TEST(TwoLots, StopBelowTheCuffRatherThanWithinIt) {
  // Nine rounds of the first would leave the cuff in two yarns: it stops after eight.
  const Leftovers found = lay({2.9, 1.8});
  ASSERT_TRUE(found.reaches);
  EXPECT_EQ(found.runs[0].to, 8);
  EXPECT_EQ(found.joins_inside, 0);
}

TEST(TwoLots, MeetWithinTheCuffWhereNothingElseServes) {
  // Halves of 1.4 and 0.8. The larger first makes nine rounds, and the smaller one with the
  // bind-off; the smaller first makes three, and 0.7 + 0.3 + 0.4 do the rest: in the rib.
  const Leftovers first = lay({2.8, 1.6});
  ASSERT_TRUE(first.reaches);
  EXPECT_EQ(first.runs[0].lot, 1);
  EXPECT_EQ(first.joins_inside, 0);
  // Five rounds of toe and five of cuff: nine of ten and three of ten both lie within one.
  LeftoversInput input;
  input.lots = {metres(2.8), metres(1.6)};
  input.margin = 0;
  SockInMaking without_rib = test::ten_rounds_input();
  without_rib.rounds = {{Section::toe, 5, 10}, {Section::cuff, 5, 10}};
  const Leftovers within = lay_leftovers(yarn_course(without_rib), input);
  ASSERT_TRUE(within.reaches);
  EXPECT_EQ(within.joins_inside, 1);
  EXPECT_EQ(within.runs[0].to, 9);
}

TEST(Lots, KeepTheirOrderWhereItServes) {
  // Two of either kind would do, in any order.
  const Leftovers found = lay({2.6, 2.6, 2.6});
  ASSERT_EQ(found.runs.size(), 2U);
  EXPECT_EQ(found.runs[0].lot, 0);
  EXPECT_EQ(found.runs[1].lot, 1);
}

TEST(TheBindOff, IsOfTheLastRoundsYarn) {
  // Half of 3.0 makes all ten rounds and has nothing left to bind off with: the tails and the
  // bind-off alone would be 0.7 m of the other, with the last round 0.8.
  const Leftovers found = lay({3.0, 1.6});
  ASSERT_TRUE(found.reaches);
  EXPECT_LE(found.runs.back().from, 10);
}

TEST(TheFewestLots, AreTakenWhateverTheirOrder) {
  const Leftovers found = lay({1.2, 1.2, 1.9, 1.2, 2.6});
  ASSERT_TRUE(found.reaches);
  ASSERT_EQ(found.runs.size(), 2U);
  EXPECT_EQ(found.joins, 1);
  EXPECT_EQ(found.runs[0].lot + found.runs[1].lot, 6);
}

TEST(EachLot, SaysWhichPartsItMakesByItself) {
  // Halves: toe 0.1 + 0.2 + 0.4 = 0.7; rib 0.6 + 0.4 = 1.0; cuff 0.2 + 0.3 + 0.4 = 0.9.
  const struct {
    double lot;
    bool toe, spiral, cuff;
  } rows[] = {{1.4, true, false, false}, {1.399, false, false, false},
              {1.8, true, false, true},  {1.799, true, false, false},
              {2.0, true, true, true},   {1.999, true, false, true}};
  for (const auto& row : rows) {
    const LotMakes makes = lay({row.lot}).lots[0];
    EXPECT_EQ(makes.toe, row.toe) << row.lot;
    EXPECT_EQ(makes.spiral, row.spiral) << row.lot;
    EXPECT_EQ(makes.cuff, row.cuff) << row.lot;
    EXPECT_FALSE(makes.widening) << row.lot;
  }
}

TEST(TooLittleYarn, SaysHowManyRoundsAndHowMuchIsMissing) {
  // Half 1.5 m: 0.1 + 0.4 + 0.3 for the bind-off leave 0.7, so seven rounds. Unbound it gives ten,
  // but the last is left to the yarn that binds off: round 10 0.1, 0.3, tails 0.4; twice.
  const Leftovers found = lay({3.0});
  EXPECT_FALSE(found.reaches);
  EXPECT_EQ(found.rounds, 7);
  EXPECT_NEAR(found.runs[0].yarn.m(), 1.5, 1e-9);
  EXPECT_NEAR(found.missing.m(), 1.6, 1e-9);
  // With it the sock is done.
  EXPECT_TRUE(lay({3.0, found.missing.m()}).reaches);
}

TEST(TooLittleYarn, ForOneRoundMakesNone) {
  // One round and its bind-off: 0.1 + 0.1 + 0.3 + 0.4 = 0.9 m.
  EXPECT_EQ(lay({1.8}).rounds, 1);
  const Leftovers none = lay({1.799});
  EXPECT_EQ(none.rounds, 0);
  EXPECT_TRUE(none.runs.empty());
  EXPECT_EQ(none.joins, 0);
}

TEST(ARun, IsCutWhereTwoPartsMeet) {
  const std::vector<LotPart> parts = parts_of(ten_rounds(), {{3, 1, 4, {}}, {0, 5, 10, {}}});
  const struct {
    int lot, from, to;
    Section section;
  } rows[] = {{3, 1, 2, Section::toe},
              {3, 3, 4, Section::spiral},
              {0, 5, 8, Section::spiral},
              {0, 9, 10, Section::cuff}};
  ASSERT_EQ(parts.size(), 4U);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    EXPECT_EQ(parts[i].lot, rows[i].lot) << i;
    EXPECT_EQ(parts[i].from, rows[i].from) << i;
    EXPECT_EQ(parts[i].to, rows[i].to) << i;
    EXPECT_EQ(parts[i].section, rows[i].section) << i;
  }
}

TEST(ALotOfNoUse, IsLeftOut) {
  // Two tails are 0.4 m a sock: 0.9 m for the pair makes no round.
  const Leftovers found = lay({0.9, 3.0});
  ASSERT_EQ(found.runs.size(), 1U);
  EXPECT_EQ(found.runs[0].lot, 1);
}

}  // namespace
}  // namespace twinround

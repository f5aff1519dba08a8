#include "roster.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "../properties/random_requests.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::with_swatch;
using test::woman_in_worsted;

PairLine line_for(const PlanRequest& request) {
  return plan_line(request).value();
}

TEST(Roster, ASeatIsThePlanOfItsRequestAndWhatIsOddOfIt) {
  PlanRequest request = with_swatch(woman_in_worsted(), 23, 32, 101.6);
  const Result<Seat> seat = plan_seat(request, {});
  ASSERT_TRUE(seat.ok());
  const PairLine line = line_for(request);
  EXPECT_EQ(seat.value().line.stitches, line.stitches);
  EXPECT_EQ(seat.value().line.with_margin, line.with_margin);
  // Doubts, such as a swatch knit flat, are no matter for a whole class.
  std::vector<std::string> codes;
  for (const Oddity& odd : seat.value().odd) codes.push_back(odd.what.code);
  EXPECT_EQ(codes.front(), "gauge_dense");
  EXPECT_EQ(std::count(codes.begin(), codes.end(), "flat_swatch"), 0);
}

TEST(Roster, ASeatWithoutAPlanTellsItsProblems) {
  PlanRequest low = woman_in_worsted();
  low.leg_height = mm(60);
  EXPECT_EQ(test::told(plan_seat(low, {}).problems()),
            std::vector<std::string>{"leg_too_short@/legHeightMm"});
}

TEST(Roster, TotalsOfNobodyAreNone) {
  const RosterTotals totals = totals_of({});
  EXPECT_EQ(totals.planned, 0);
  EXPECT_TRUE(totals.wool.empty() && totals.needles.empty());
}

TEST(Roster, AddsUpWoolByCategoryAndNeedlesBySizeAndCable) {
  const PairLine worsted = line_for(woman_in_worsted());
  PlanRequest sock_yarn = woman_in_worsted();
  sock_yarn.swatch = {};
  sock_yarn.yarn = {};
  sock_yarn.yarn.category = 1;
  const PairLine fingering = line_for(sock_yarn);
  PlanRequest unnamed = woman_in_worsted();
  unnamed.yarn = {};
  const PairLine unlabelled = line_for(unnamed);
  ASSERT_EQ(unlabelled.category, 4);

  const RosterTotals totals = totals_of({worsted, fingering, worsted, unlabelled});
  EXPECT_EQ(totals.planned, 4);
  ASSERT_EQ(totals.wool.size(), 2u);
  EXPECT_EQ(totals.wool[0].category, 1);
  EXPECT_EQ(totals.wool[0].pairs, 1);
  EXPECT_EQ(totals.wool[1].pairs, 3);
  EXPECT_NEAR(totals.wool[1].length.m(), 3 * worsted.with_margin.m(), 1e-9);
  EXPECT_NEAR(totals.wool[1].mass.g(),
              2 * worsted.with_margin_mass.g() + unlabelled.with_margin_mass.g(), 1e-9);
  EXPECT_EQ(totals.wool[1].balls, 2 * worsted.balls->count);
  EXPECT_EQ(totals.wool[1].pairs_without_ball, 1);
  EXPECT_EQ(totals.wool[0].pairs_without_ball, 0);
  ASSERT_EQ(totals.needles.size(), 2u);
  EXPECT_EQ(totals.needles[0].needle.diameter, mm(2.25));
  EXPECT_EQ(totals.needles[0].count, 1);
  EXPECT_EQ(totals.needles[1].count, 3);
}

TEST(Roster, NeedlesOfOneSizeButAnotherCableAreLentApart) {
  PairLine long_one = line_for(woman_in_worsted());
  PairLine none = long_one;
  PairLine short_one = long_one;
  long_one.cable = mm(1200);
  none.cable.reset();
  const RosterTotals totals = totals_of({none, long_one, short_one, long_one});
  ASSERT_EQ(totals.needles.size(), 3u);
  EXPECT_EQ(totals.needles[0].cable, mm(1000));
  EXPECT_EQ(totals.needles[1].cable, mm(1200));
  EXPECT_EQ(totals.needles[1].count, 2);
  EXPECT_FALSE(totals.needles[2].cable);
}

TEST(RosterProperty, LosesNoPairNoNeedleAndNoWool) {
  std::vector<PairLine> lines;
  double metres = 0;
  double grams = 0;
  test::for_random_plans(600, [&](const PlanRequest& request, const Plan&, test::Dice&) {
    const Result<Seat> seat = plan_seat(request, {});
    ASSERT_TRUE(seat.ok());
    lines.push_back(seat.value().line);
    metres += lines.back().with_margin.m();
    grams += lines.back().with_margin_mass.g();
  });
  const RosterTotals totals = totals_of(lines);
  int pairs = 0;
  int needles = 0;
  for (const WoolTotal& wool : totals.wool) {
    pairs += wool.pairs;
    metres -= wool.length.m();
    grams -= wool.mass.g();
  }
  for (const NeedleTotal& needle : totals.needles) needles += needle.count;
  EXPECT_EQ(pairs, totals.planned);
  EXPECT_EQ(needles, totals.planned);
  EXPECT_EQ(totals.planned, static_cast<int>(lines.size()));
  EXPECT_NEAR(metres, 0, 1e-6);
  EXPECT_NEAR(grams, 0, 1e-6);
}

}  // namespace
}  // namespace twinround

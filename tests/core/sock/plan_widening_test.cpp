// The leg that the foot's count does not pass: widened, or refused.
#include <gtest/gtest.h>

#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::find_code;
using test::mm;
using test::number_in;
using test::planned;
using test::rounds_of;
using test::says;
using test::stitch_by_stitch;
using test::told;
using test::with_rib;
using test::woman_in_worsted;
using test::word_in;

// A leg of 350 mm on a calf of 452: the calf's height, 1.38 x 246 = 339.5, lies below the edge.
PlanRequest wide_calf() {
  PlanRequest request = woman_in_worsted();
  request.leg_height = mm(350);
  request.foot.calf_girth = mm(452);
  return request;
}

// By hand. 40 stitches go to 40 x 19.95384/2 = 399.08 mm, and 0.85 of that is 339.2. The leg is 216
// at 110.7 mm and 452 at 339.5, 1.03155 a mm between: 339.2 at 110.7 + 123.2/1.03155 = 230.1 mm.
// 50 stitches pass 424.0, reached at 312.4; 60 pass 508.8, all of it.
TEST(PlanWidening, WidensTheWideCalfTwice) {
  const Plan plan = planned(wide_calf());
  EXPECT_EQ(plan.stitches.value(), 40);
  ASSERT_EQ(plan.widening.size(), 2U);
  EXPECT_EQ(plan.widening[0].rib.knit, 2);
  EXPECT_EQ(plan.widening[0].rib.purl, 3);
  EXPECT_EQ(plan.widening[0].rib.stitches.value(), 50);
  EXPECT_NEAR(plan.widening[0].needed_from.mm(), 230.15, 0.01);
  EXPECT_EQ(plan.widening[1].rib.knit, 3);
  EXPECT_EQ(plan.widening[1].rib.purl, 3);
  EXPECT_EQ(plan.widening[1].rib.stitches.value(), 60);
  EXPECT_NEAR(plan.widening[1].needed_from.mm(), 312.36, 0.01);
  EXPECT_EQ(plan.edge_stitches.value(), 60);
  EXPECT_NEAR(plan.leg_fit.worst_use, 452 / (60 * 9.97692), 1e-5);
}

TEST(PlanWidening, PutsEachWideningRoundJustBelowItsHeight) {
  // 586.16 mm are 161.5, so 162 rounds: toe 17, cuff 8, rib 137. From 230.1 to the edge are 33.03
  // rounds, so the wider tube is there from the 34th below the edge: round 137 + 8 - 34 = 111 of
  // the rib, and the one before widens: 110. From 312.4: 10.4, the 11th; 133.
  const Plan plan = planned(wide_calf());
  EXPECT_EQ(plan.length.spiral.value(), 137);
  EXPECT_EQ(plan.widening[0].round, 110);
  EXPECT_EQ(plan.widening[1].round, 133);
  EXPECT_EQ(rounds_of(plan, Section::spiral), 110);
  EXPECT_EQ(rounds_of(plan, Section::widening), 27);
  EXPECT_EQ(rounds_of(plan, Section::cuff), 8);
  EXPECT_EQ(plan.spiral_rounds.value(), 110);
  EXPECT_EQ(plan.widening_rounds.value(), 27);
}

TEST(PlanWidening, YarnTimeAndCableFollow) {
  const Plan plan = planned(wide_calf());
  // Loop 19.95384 mm: 110 x 40, then 23 x 50 and 4 x 60, and a cuff of 8 x 60.
  EXPECT_NEAR(plan.yarn.need.spiral.mm(), 19.95384 * 4400, 0.1);
  EXPECT_NEAR(plan.yarn.need.widening.mm(), 19.95384 * (23 * 50 + 4 * 60), 0.1);
  EXPECT_NEAR(plan.yarn.need.cuff.mm(), 19.95384 * 480, 0.1);
  EXPECT_NEAR(plan.yarn.need.bind_off.mm(), 3.3 * 452, 1e-6);  // the edge passes the calf
  // 2 x (564 + 4400 + 1390 + 480) stitches at 15 a minute, 162 rounds of 20 s.
  EXPECT_NEAR(plan.time.minutes(), 2 * 6834 / 15.0 + 162 / 3.0, 1e-9);
  // 4 x 60/(2 x 0.19685) + 160 + 240
  EXPECT_NEAR(plan.needle.cable_least.mm(), 1009.6, 0.05);
}

TEST(PlanWidening, KeepsTheColumnsOfTheRound) {
  // Rib round 110 stands 110/4 = 27 steps on: place (0 - 27) mod 4 = 1 of k2 p2.
  const Plan plan = planned(wide_calf());
  const RoundSpan* widening = nullptr;
  for (const RoundSpan& span : plan.rounds) {
    if (span.section == Section::widening && widening == nullptr) widening = &span;
  }
  ASSERT_NE(widening, nullptr);
  EXPECT_EQ(widening->rounds, 1);
  EXPECT_EQ(widening->stitches, 50);
  const RoundLine& line = plan.lines[static_cast<std::size_t>(widening->line)];
  EXPECT_EQ(stitch_by_stitch(line.first), "kpp+kkpp+kkpp+kkpp+kkpp+k");
  EXPECT_EQ(stitch_by_stitch(line.second), stitch_by_stitch(line.first));
}

TEST(PlanWidening, IsToldWithTheLargerNeedleBesideIt) {
  const Plan plan = planned(wide_calf());
  const auto caution = find_code(plan.cautions, "leg_widened");
  ASSERT_TRUE(caution.has_value());
  EXPECT_EQ(caution->field, "/legHeightMm");
  EXPECT_EQ(number_in(*caution, "from"), 40);
  EXPECT_EQ(number_in(*caution, "to"), 60);
  EXPECT_NEAR(*number_in(*caution, "heightMm"), 230.15, 0.01);
  EXPECT_EQ(number_in(*caution, "girthMm"), 452);
  EXPECT_EQ(word_in(*caution, "girth"), "measured");
  // 452/399.08 is 1.1326 of the limit where 0.85 is the most: stitches 1.3325 times as wide, of a
  // needle 1.3325 times as thick: 5.996 mm, so 6 (US 10).
  ASSERT_TRUE(plan.larger_needle.has_value());
  EXPECT_NEAR(plan.larger_needle->from_height.mm(), 230.15, 0.01);
  EXPECT_NEAR(plan.larger_needle->gauge_at_most.per_mm(), 0.196850 / 1.33250, 5e-6);
  EXPECT_EQ(plan.larger_needle->needle.diameter.mm(), 6);
  EXPECT_STREQ(plan.larger_needle->needle.us, "10");
}

TEST(PlanWidening, SaysWhereTheCalfIsAGuess) {
  // 1.60 x 228 = 364.8, more than 339.2: first needed above the ankle, and the girth is estimated.
  PlanRequest request = wide_calf();
  request.foot.calf_girth.reset();
  const Plan plan = planned(request);
  EXPECT_EQ(plan.edge_stitches.value(), 50);
  EXPECT_EQ(word_in(*find_code(plan.cautions, "leg_widened"), "girth"), "estimated");
  // An edge not measured is not what the bind-off is reckoned with: the heel is.
  EXPECT_NEAR(plan.yarn.need.bind_off.mm(), 3.3 * 310, 1e-6);
}

TEST(PlanWidening, ALegThatPassesIsLeftAlone) {
  const Plan plan = planned(woman_in_worsted());
  EXPECT_TRUE(plan.widening.empty());
  EXPECT_FALSE(plan.larger_needle.has_value());
  EXPECT_EQ(plan.edge_stitches, plan.stitches);
  EXPECT_EQ(plan.spiral_rounds, plan.length.spiral);
  EXPECT_EQ(plan.widening_rounds.value(), 0);
  EXPECT_EQ(plan.yarn.need.widening.mm(), 0);
  EXPECT_FALSE(says(plan.cautions, "leg_widened"));
}

TEST(PlanWidening, TellsTheStitchesThatCrossTheHalves) {
  // k3 p1 on 44: 11 repeats, and one in each would be odd, so k4 p2, 66. Rib round 107 begins at
  // place 2: the first half ends one column sooner or later than the second.
  PlanRequest request = with_rib(wide_calf(), 3, 1);
  request.stitch_count = 44;
  const Plan plan = planned(request);
  ASSERT_FALSE(plan.widening.empty());
  EXPECT_EQ(plan.widening[0].rib.knit, 4);
  EXPECT_EQ(plan.widening[0].rib.purl, 2);
  const RoundSpan* before = nullptr;
  for (const RoundSpan& span : plan.rounds) {
    if (span.section == Section::widening && before == nullptr) before = &span;
  }
  const RoundLine& line = plan.lines[static_cast<std::size_t>(before->line)];
  const int uneven = stitches_after(line.first).value() - stitches_after(line.second).value();
  EXPECT_EQ(plan.widening[0].crossing, uneven / 2);
  EXPECT_EQ(says(plan.cautions, "stitch_crosses"), uneven != 0);
}

TEST(PlanWidening, RefusesALegThatNoWideningPasses) {
  // 8 stitches of k4 p4 grow to k12 p12, 24: 239 mm, 0.85 of it 203.
  PlanRequest request = with_rib(wide_calf(), 4, 4);
  request.stitch_count = 8;
  const Result<Plan> result = make_plan(request);
  ASSERT_FALSE(result.ok());
  EXPECT_EQ(told(result.problems()), (std::vector<std::string>{"leg_too_wide@/legHeightMm"}));
  EXPECT_EQ(number_in(result.problems()[0], "heightMm"), 0);  // the ankle's 216 already
  EXPECT_EQ(number_in(result.problems()[0], "girthMm"), 452);
}

TEST(PlanWidening, RefusesARibTooShortToWiden) {
  // Bulky and hardly elastic: 8 stitches of 17.5 mm, 140 mm at the widest, on a leg of 600 mm from
  // the floor up. Every widening adds 4 stitches, and 600/(0.85 x 17.5) = 40.3 takes nine; but
  // below the floor's height the rib has (0.80 - 0.50) x 246 mm = 74 mm, 6 rounds.
  PlanRequest request = with_rib(test::with_swatch(wide_calf(), 6, 8.4, 101.6), 1, 1);
  request.swatch.stretched_width = mm(105);
  request.stitch_count = 8;
  request.foot.ankle_girth = mm(600);
  request.foot.calf_girth = mm(600);
  request.toe_share = 0.50;
  request.length_ease = -0.20;
  const Result<Plan> result = make_plan(request);
  EXPECT_EQ(told(result.problems()), (std::vector<std::string>{"no_room_to_widen@/legHeightMm"}));
  EXPECT_EQ(number_in(result.problems()[0], "stages"), 9);
}

}  // namespace
}  // namespace twinround

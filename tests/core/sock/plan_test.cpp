#include "plan.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::planned;
using test::told;
using test::with_rib;
using test::woman_in_worsted;

TEST(Plan, IsAsWorkedByHandAcrossTheSock) {
  const Plan plan = planned(woman_in_worsted());
  // T = 228 x 0.9 x 20/101.6 = 40.39; 40 reads alike in both halves.
  EXPECT_EQ(plan.stitches.value(), 40);
  EXPECT_EQ(plan.advised->value(), 40);
  EXPECT_TRUE(plan.halves_alike);
  EXPECT_NEAR(plan.girth_ease, -0.1087719, 5e-8);       // 40/44.8819 - 1
  EXPECT_NEAR(plan.finished_girth.mm(), 203.2, 1e-9);   // 40 x 5.08
  EXPECT_NEAR(plan.rest_girth.mm(), 142.24, 1e-9);      // k2 p2 pulls in to 0.70
  EXPECT_NEAR(plan.widest_girth.mm(), 399.0769, 5e-5);  // 40 x 19.95384/2
  EXPECT_NEAR(plan.pass_girth.mm(), 339.2153, 5e-5);    // 0.85 of that
  EXPECT_NEAR(plan.heel_use, 0.7767927, 5e-8);          // 310/399.0769
  EXPECT_TRUE(plan.ribs_that_fit.empty());
  // The edge at 200 mm lies 89.3 of 228.78 mm up from ankle to calf: 216 + 0.39033 x 157 = 277.28.
  EXPECT_NEAR(plan.leg_fit.widest_girth.mm(), 277.282, 5e-4);
  EXPECT_NEAR(plan.leg_fit.worst_use, 0.694809, 5e-7);
  EXPECT_FALSE(plan.leg_fit.fails_from.has_value());
}

TEST(Plan, IsAsWorkedByHandAlongTheSock) {
  const Plan plan = planned(woman_in_worsted());
  EXPECT_EQ(plan.toe.cast_on.value(), 16);
  EXPECT_EQ(plan.toe.wraps, 8);
  EXPECT_EQ(plan.toe.increase_rounds, 6);
  EXPECT_EQ(plan.toe.counts.size(), 17U);  // 0.25 x 246 x 28/101.6 = 16.95
  EXPECT_EQ(plan.length.total.value(), 120);
  EXPECT_EQ(plan.length.spiral.value(), 95);
  EXPECT_EQ(plan.length.cuff.value(), 8);
  EXPECT_NEAR(plan.length.length.mm(), 436.16, 1e-9);
  EXPECT_EQ(plan.period.value(), 16);
  ASSERT_TRUE(plan.pitch.has_value());
  EXPECT_NEAR(plan.pitch->degrees(), 19.2900, 5e-5);  // atan(1.4/4)
}

TEST(Plan, IsAsWorkedByHandInYarnAndTime) {
  const Plan plan = planned(woman_in_worsted());
  EXPECT_NEAR(plan.yarn.loop.mm(), 19.95384, 5e-6);
  EXPECT_FALSE(plan.yarn.weighed);
  // Toe 564 stitches, rib 95 x 40, cuff 8 x 40, cast-on 16: 4700 x 19.95384 = 93.78307 m. Bind-off
  // 3.3 x 373 (the calf) = 1.2309 m, tails 0.4 m.
  EXPECT_NEAR(plan.yarn.need.sock.m(), 95.41397, 5e-5);
  EXPECT_NEAR(plan.yarn.need.pair.m(), 190.82793, 1e-4);
  EXPECT_NEAR(plan.yarn.need.with_margin.m(), 209.91073, 1e-4);
  EXPECT_NEAR(plan.yarn.pair_mass->g(), 95.41397, 5e-5);  // 100 g of 200 m
  EXPECT_NEAR(plan.yarn.sock_mass->g(), 47.70698, 5e-5);
  EXPECT_NEAR(plan.yarn.with_margin_mass->g(), 104.95536, 5e-5);
  EXPECT_FALSE(plan.yarn.mass_guessed);
  EXPECT_EQ(plan.yarn.balls->count, 2);
  EXPECT_NEAR(plan.yarn.balls->spare.m(), 190.08927, 1e-4);
  EXPECT_NEAR(plan.yarn.relative_error, 0.1046763, 5e-8);
  EXPECT_NEAR(plan.needle.cable_least.mm(), 806.4, 1e-9);
  EXPECT_EQ(plan.needle.cable_buy->mm(), 1000);
  EXPECT_STREQ(plan.needle.name.us, "7");
  EXPECT_EQ(*plan.firmness, Firmness::usual);  // sqrt(500)/1.995 = 11.2
  // 2 x 4684 stitches at 15 a minute, 120 x 20 s of turns.
  EXPECT_NEAR(plan.time.minutes(), 664.5333, 5e-5);
}

TEST(Plan, LeftOutFieldsStandAtTheirDefaults) {
  PlanRequest spelt_out = woman_in_worsted();
  spelt_out.swatch.fabric = Fabric::stockinette;
  spelt_out.swatch.washed = true;
  spelt_out.cuff = mm(30);
  spelt_out.rib = Rib{2, 2, 4, Lean::left};
  spelt_out.girth_ease = -0.10;
  spelt_out.length_ease = -0.04;
  spelt_out.toe_share = 0.25;
  spelt_out.tip_share = 0.40;
  spelt_out.toe_shape = ToeShape::round;
  spelt_out.stitches_per_minute = 15;
  spelt_out.yarn_margin = 0.10;
  const Plan asked = planned(spelt_out);
  const Plan silent = planned(woman_in_worsted());
  EXPECT_EQ(asked.stitches, silent.stitches);
  EXPECT_EQ(asked.toe.counts, silent.toe.counts);
  EXPECT_EQ(asked.lines, silent.lines);
  EXPECT_EQ(asked.length.length, silent.length.length);
  EXPECT_EQ(asked.length.cuff, silent.length.cuff);
  EXPECT_EQ(asked.rest_girth, silent.rest_girth);
  EXPECT_EQ(asked.yarn.loop, silent.yarn.loop);
  EXPECT_EQ(asked.yarn.need.with_margin, silent.yarn.need.with_margin);
  EXPECT_EQ(asked.time, silent.time);
  EXPECT_EQ(told(asked.cautions), told(silent.cautions));
}

TEST(Plan, ChoicesAreWhatEachCountWouldBe) {
  const Plan plan = planned(woman_in_worsted());
  const std::vector<int> counts = {32, 36, 40, 44, 48};
  ASSERT_EQ(plan.choices.size(), counts.size());
  for (std::size_t i = 0; i < counts.size(); ++i) {
    SCOPED_TRACE(counts[i]);
    PlanRequest named = woman_in_worsted();
    named.stitch_count = counts[i];
    const Plan other = planned(named);
    const Choice& choice = plan.choices[i];
    EXPECT_EQ(choice.stitches.value(), counts[i]);
    EXPECT_NEAR(choice.girth.mm(), counts[i] * 5.08, 1e-9);
    EXPECT_NEAR(choice.ease, counts[i] / 44.88189 - 1, 1e-6);
    EXPECT_NEAR(choice.heel_use, 310 / (counts[i] * 9.976922), 1e-6);
    EXPECT_EQ(choice.halves_alike, counts[i] % 8 == 0);
    EXPECT_EQ(choice.yarn_pair, other.yarn.need.pair);
    EXPECT_EQ(choice.time, other.time);
  }
}

TEST(Plan, ANamedCountIsObeyedWithTheAdviceBesideIt) {
  PlanRequest request = woman_in_worsted();
  request.stitch_count = 44;
  const Plan plan = planned(request);
  EXPECT_EQ(plan.stitches.value(), 44);
  EXPECT_EQ(plan.advised->value(), 40);
  EXPECT_FALSE(plan.halves_alike);
}

TEST(Plan, RibsThatFitAreToldOnlyWhereTheRibIsTheTrouble) {
  EXPECT_TRUE(planned(woman_in_worsted()).ribs_that_fit.empty());
  EXPECT_FALSE(planned(with_rib(test::with_swatch(woman_in_worsted(), 18, 25, 101.6), 4, 3))
                   .ribs_that_fit.empty());
}

TEST(Plan, ANamedCountOutsideTheEaseOffersRibsEvenWhereNoneIsAdvised) {
  // T = 185.2 x 0.9 x 0.06 = 10: k12 p12 has 24 at least, too far to be advised. Named, its ease is
  // 24/11.11 - 1 = +1.16; k1 p1 on 10 has -0.10 and goes over the heel: 1.45 x 185.2/(10 x 33.54) =
  // 0.80.
  PlanRequest request = with_rib(test::with_swatch(woman_in_worsted(), 6, 8, 100), 12, 12);
  request.foot = FootInput{};
  request.foot.length = mm(190);
  request.foot.ball_girth = mm(185.2);
  request.leg_height = mm(150);
  request.stitch_count = 24;
  const Plan plan = planned(request);
  EXPECT_FALSE(plan.advised.has_value());
  EXPECT_TRUE(test::says(plan.cautions, "ease_outside"));
  ASSERT_FALSE(plan.ribs_that_fit.empty());
  EXPECT_EQ(plan.ribs_that_fit.front().count.value(), 10);
}

TEST(Plan, PitchIsNothingForAStraightRibAndAbsentForOneByOne) {
  EXPECT_EQ(planned(with_rib(woman_in_worsted(), 2, 2, 0)).pitch->degrees(), 0);
  EXPECT_EQ(planned(with_rib(woman_in_worsted(), 1, 1, 0)).pitch->degrees(), 0);
  EXPECT_FALSE(planned(with_rib(woman_in_worsted(), 1, 1, 4)).pitch.has_value());
  EXPECT_FALSE(planned(with_rib(woman_in_worsted(), 1, 1, 1)).pitch.has_value());
}

TEST(Plan, TheEdgeMustPassTheHeelOrAWiderCalf) {
  // Bind-off 3.3 x the widest girth known to pass: the calf's 373, or without one the heel's 310.
  PlanRequest request = woman_in_worsted();
  EXPECT_NEAR(planned(request).yarn.need.bind_off.mm(), 1230.9, 1e-9);
  request.foot.calf_girth = mm(300);
  EXPECT_NEAR(planned(request).yarn.need.bind_off.mm(), 1023, 1e-9);
  request.foot.calf_girth.reset();
  EXPECT_NEAR(planned(request).yarn.need.bind_off.mm(), 1023, 1e-9);
}

TEST(Plan, IsRefusedWithEveryProblemAtOnce) {
  PlanRequest request = woman_in_worsted();
  request.stitch_count = 41;
  request.leg_height = mm(40);
  const Result<Plan> refused = make_plan(request);
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(told(refused.problems()),
            (std::vector<std::string>{"not_a_count@/stitchCount", "leg_too_short@/legHeightMm"}));
}

TEST(Plan, WithoutFootOrGaugeSaysBoth) {
  PlanRequest request;
  request.leg_height = mm(200);
  const Result<Plan> refused = make_plan(request);
  ASSERT_FALSE(refused.ok());
  const std::vector<std::string> problems = told(refused.problems());
  for (const char* expected :
       {"required@/foot/lengthMm", "required@/foot/ballGirthMm", "required@/swatch"}) {
    EXPECT_EQ(std::count(problems.begin(), problems.end(), expected), 1) << expected;
  }
}

TEST(Plan, AStretchedSwatchTooNarrowHidesNoOtherProblem) {
  PlanRequest request = woman_in_worsted();
  request.swatch.stretched_width = mm(50);
  request.stitch_count = 41;
  request.leg_height = mm(40);
  const Result<Plan> refused = make_plan(request);
  ASSERT_FALSE(refused.ok());
  const std::vector<std::string> problems = told(refused.problems());
  for (const char* expected : {"stretched_too_narrow@/swatch/stretchedWidthMm",
                               "not_a_count@/stitchCount", "leg_too_short@/legHeightMm"}) {
    EXPECT_EQ(std::count(problems.begin(), problems.end(), expected), 1) << expected;
  }
}

}  // namespace
}  // namespace twinround

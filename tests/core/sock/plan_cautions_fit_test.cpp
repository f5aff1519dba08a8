// What a plan must not leave unsaid about the fit and the rib.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "plan.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::find_code;
using test::mm;
using test::number_in;
using test::planned;
using test::says;
using test::told;
using test::with_rib;
using test::with_swatch;
using test::woman_in_worsted;
using test::word_in;

TEST(Cautions, ASockThatFitsHasOnlyItsFlatSwatch) {
  EXPECT_EQ(told(planned(woman_in_worsted()).cautions),
            (std::vector<std::string>{"flat_swatch@/swatch"}));
}

// 40 stitches named, on a heel that uses this share of their 399.0769 mm.
Plan with_heel_use(double use) {
  PlanRequest request = woman_in_worsted();
  request.stitch_count = 40;
  request.foot.heel_ankle_girth = planned(request).widest_girth * use;
  request.leg_height = mm(230);
  return planned(request);
}

TEST(Cautions, AHeelIsTightOver85HundredthsAndWillNotPassOver95) {
  struct Row {
    double use = 0;
    const char* code = "";
  };
  for (const Row& row : std::vector<Row>{{0.80, ""},
                                         {0.85, ""},
                                         {0.85 + 1e-10, ""},
                                         {0.85 + 1e-6, "heel_tight"},
                                         {0.95, "heel_tight"},
                                         {0.95 + 1e-10, "heel_tight"},
                                         {0.95 + 1e-6, "heel_will_not_pass"},
                                         {1.1, "heel_will_not_pass"}}) {
    SCOPED_TRACE(row.use);
    const Plan plan = with_heel_use(row.use);
    for (const char* code : {"heel_tight", "heel_will_not_pass"}) {
      EXPECT_EQ(says(plan.cautions, code), code == std::string(row.code)) << code;
    }
    EXPECT_FALSE(says(plan.cautions, "heel_moved_count"));  // a named count is not moved
  }
}

TEST(Cautions, AHeelThatMovesTheCountSaysFromWhereAndWhy) {
  PlanRequest request = woman_in_worsted();
  request.foot.heel_ankle_girth = mm(345);  // 345/399.08 = 0.8645; 44 take 438.98
  request.leg_height = mm(230);
  const Plan plan = planned(request);
  EXPECT_EQ(plan.stitches.value(), 44);
  const auto moved = find_code(plan.cautions, "heel_moved_count");
  ASSERT_TRUE(moved.has_value());
  EXPECT_EQ(moved->field, "/foot/heelAnkleGirthMm");
  EXPECT_EQ(number_in(*moved, "from"), 40);
  EXPECT_EQ(number_in(*moved, "to"), 44);
  EXPECT_NEAR(*number_in(*moved, "heelUse"), 345 / 399.076878, 1e-8);
}

// 40 stitches named, for a foot round which they have this ease.
Plan with_ease(double ease) {
  PlanRequest request = woman_in_worsted();
  request.stitch_count = 40;
  request.foot.ball_girth = mm(203.2 / (1 + ease));
  request.foot.heel_ankle_girth = 1.36 * *request.foot.ball_girth;
  return planned(request);
}

TEST(Cautions, EaseOutsideTwoToTwentyPercentIsNeverSilent) {
  struct Row {
    double ease = 0;
    const char* code = "";
  };
  // Asked for are -0.10; within 0.04 of that nothing is said.
  for (const Row& row : std::vector<Row>{{-0.30, "ease_outside"},
                                         {-0.20 - 1e-7, "ease_outside"},
                                         {-0.20 - 1e-11, "ease_off"},
                                         {-0.20 + 1e-7, "ease_off"},
                                         {-0.14 - 1e-7, "ease_off"},
                                         {-0.14 + 1e-7, ""},
                                         {-0.10, ""},
                                         {-0.06 - 1e-7, ""},
                                         {-0.06 + 1e-7, "ease_off"},
                                         {-0.02 - 1e-7, "ease_off"},
                                         {-0.02 + 1e-11, "ease_off"},
                                         {-0.02 + 1e-7, "ease_outside"},
                                         {0.10, "ease_outside"}}) {
    SCOPED_TRACE(row.ease);
    const Plan plan = with_ease(row.ease);
    for (const char* code : {"ease_outside", "ease_off"}) {
      EXPECT_EQ(says(plan.cautions, code), code == std::string(row.code)) << code;
    }
    if (const auto caution = find_code(plan.cautions, row.code)) {
      EXPECT_NEAR(*number_in(*caution, "ease"), row.ease, 1e-12);
      EXPECT_EQ(number_in(*caution, "asked"), -0.10);
      EXPECT_EQ(caution->field, "/stitchCount");  // her own count, not the rib
    }
  }
}

TEST(Cautions, AnEaseJustOutsideDoesNotReadAsTheLimitItself) {
  const auto message = [](double ease) {
    return find_code(with_ease(ease).cautions, "ease_outside")->message;
  };
  EXPECT_NE(message(-0.0196).find(" 1.9 % smaller"), std::string::npos) << message(-0.0196);
  EXPECT_NE(message(-0.2001).find(" 20.1 % smaller"), std::string::npos) << message(-0.2001);
  EXPECT_NE(message(0.0312).find(" 3.2 % larger"), std::string::npos) << message(0.0312);
}

TEST(Cautions, AnAdvisedCountsEaseIsTheRibsTrouble) {
  const Plan plan = planned(with_rib(with_swatch(woman_in_worsted(), 18, 25, 101.6), 4, 3));
  const auto outside = find_code(plan.cautions, "ease_outside");
  ASSERT_TRUE(outside.has_value());
  EXPECT_EQ(outside->field, "/rib");
}

TEST(Cautions, EaseOutsideOffersRibsThatFit) {
  EXPECT_FALSE(with_ease(-0.21).ribs_that_fit.empty());
  EXPECT_FALSE(with_ease(-0.01).ribs_that_fit.empty());
}

TEST(Cautions, ALegThatIsWidenedIsSaidWithWhereFromAndToWhat) {
  // 32 and 44.8 over 4 in: T = 228 x 0.9 x 32/101.6 = 64.63, so 64 of 6.23558 mm at most, which
  // pass 0.85 x 399.08 = 339.22. At 330 mm the leg is 216 + 184 x (330 - 110.7)/228.78 = 392.38
  // round; it passes 339.22 at 110.7 + (123.22/184) x 228.78 = 263.9 mm. 80 stitches of k2 p3 pass
  // 424.0.
  PlanRequest request = with_swatch(woman_in_worsted(), 32, 44.8, 101.6);
  request.leg_height = mm(330);
  request.foot.calf_girth = mm(400);
  const Plan plan = planned(request);
  const auto widened = find_code(plan.cautions, "leg_widened");
  ASSERT_TRUE(widened.has_value());
  EXPECT_EQ(widened->field, "/legHeightMm");
  EXPECT_EQ(word_in(*widened, "girth"), "measured");
  EXPECT_EQ(number_in(*widened, "from"), 64);
  EXPECT_EQ(number_in(*widened, "to"), 80);
  EXPECT_NEAR(*number_in(*widened, "heightMm"), 263.9, 0.05);
  EXPECT_NEAR(*number_in(*widened, "girthMm"), 392.38, 0.005);
  // 80 from the start need no widening, nor 76 (402.8); 72 do (381.6).
  for (const int count : {80, 76, 72}) {
    request.stitch_count = count;
    EXPECT_EQ(says(planned(request).cautions, "leg_widened"), count == 72) << count;
  }
}

TEST(Cautions, AnAnkleTooWideIsWidenedForFromTheFloor) {
  PlanRequest request = woman_in_worsted();
  request.stitch_count = 24;  // passes 0.85 x 24 x 9.97692 = 203.5; 30 pass 254.4
  request.foot.calf_girth = mm(180);
  const auto widened = find_code(planned(request).cautions, "leg_widened");
  ASSERT_TRUE(widened.has_value());
  EXPECT_EQ(word_in(*widened, "girth"), "measured");
  EXPECT_EQ(number_in(*widened, "heightMm"), 0);
  EXPECT_EQ(number_in(*widened, "girthMm"), 216);  // the ankle's, not the edge's
  EXPECT_EQ(number_in(*widened, "to"), 30);
}

TEST(Cautions, HalvesLeftUnevenAreSaidWithTheRoundAndTheStitches) {
  // k3 p1 on 44: eleven repeats, so both columns grow at once (k4 p2, 66). Straight: each half of
  // 22 is five repeats and two knits, or a knit and a purl and five repeats: 10 made against 12.
  PlanRequest request = with_rib(woman_in_worsted(), 3, 1, 0);
  request.stitch_count = 44;  // passes 0.85 x 438.98 = 373.1
  request.foot.calf_girth = mm(452);
  request.leg_height = mm(350);
  const Plan plan = planned(request);
  ASSERT_EQ(plan.widening.size(), 1U);
  const auto crosses = find_code(plan.cautions, "stitch_crosses");
  ASSERT_TRUE(crosses.has_value());
  EXPECT_EQ(crosses->field, "/rib");
  EXPECT_EQ(number_in(*crosses, "stitches"), -1);  // 32 and 34: one comes back to the first half
  EXPECT_EQ(number_in(*crosses, "round"), plan.widening[0].round);
  request.rib.knit = 2;  // k2 p2: even halves whatever the count
  request.rib.purl = 2;
  EXPECT_FALSE(says(planned(request).cautions, "stitch_crosses"));
}

struct Legs {
  const char* what = "";
  double leg_mm = 0;
  bool ankle = false;
  bool calf = false;
  const char* girth = "";
};

TEST(Cautions, AWidenedLegSaysWhetherItsGirthWasMeasured) {
  // Ankle height 0.45 x 246 = 110.7 mm, calf height 1.38 x 246 = 339.5 mm. Below the one only the
  // ankle's girth counts, above the other only the calf's, between them both.
  const std::vector<Legs> table = {
      {"below the ankle, ankle measured", 100, true, false, "measured"},
      {"below the ankle, nothing measured", 100, false, false, "estimated"},
      {"below the ankle, calf measured", 100, false, true, "estimated"},
      {"between, both measured", 250, true, true, "measured"},
      {"between, calf measured", 250, false, true, "estimated"},
      {"between, ankle measured", 250, true, false, "estimated"},
      {"above the calf, both measured", 345, true, true, "measured"},
      {"above the calf, calf measured", 345, false, true, "measured"},
      {"above the calf, ankle measured", 345, true, false, "estimated"},
  };
  for (const Legs& row : table) {
    SCOPED_TRACE(row.what);
    PlanRequest request = woman_in_worsted();
    request.cuff = mm(0);
    request.stitch_count = 24;  // passes 203.5: neither ankle nor calf
    request.leg_height = mm(row.leg_mm);
    request.foot.ankle_girth.reset();
    request.foot.calf_girth.reset();
    if (row.ankle) request.foot.ankle_girth = mm(216);
    if (row.calf) request.foot.calf_girth = mm(373);
    const auto widened = find_code(planned(request).cautions, "leg_widened");
    ASSERT_TRUE(widened.has_value());
    EXPECT_EQ(word_in(*widened, "girth"), row.girth);
  }
}

struct Ribbed {
  int knit = 0;
  int purl = 0;
  int shift = 0;
  const char* code = "";
};

TEST(Cautions, ARibThatIsNoSpiralSaysSo) {
  for (const Ribbed& row : std::vector<Ribbed>{{2, 2, 4, ""},
                                               {2, 2, 0, ""},
                                               {2, 2, 1, "shift_every_round"},
                                               {1, 2, 1, "shift_every_round"},
                                               {1, 1, 0, ""},
                                               {1, 1, 1, "moss_stitch"},
                                               {1, 1, 2, "no_lean"},
                                               {1, 1, 4, "no_lean"}}) {
    SCOPED_TRACE("k" + std::to_string(row.knit) + " p" + std::to_string(row.purl) + " every " +
                 std::to_string(row.shift));
    const Plan plan = planned(with_rib(woman_in_worsted(), row.knit, row.purl, row.shift));
    for (const char* code : {"shift_every_round", "moss_stitch", "no_lean"}) {
      EXPECT_EQ(says(plan.cautions, code), code == std::string(row.code)) << code;
    }
  }
}

TEST(Cautions, WhatStopsTheFootComesBeforeWhatIsUnsure) {
  PlanRequest request = woman_in_worsted();
  request.stitch_count = 24;
  request.swatch.washed = false;
  request.foot.heel_ankle_girth.reset();
  const std::vector<std::string> order = told(planned(request).cautions);
  ASSERT_GE(order.size(), 3U);
  EXPECT_EQ(order.front(), "heel_will_not_pass@/stitchCount");
  EXPECT_EQ(order.back(), "unwashed_swatch@/swatch/washed");
}

TEST(Cautions, AHeelSmallerThanTheBallIsDoubted) {
  PlanRequest request = woman_in_worsted();
  request.foot.heel_ankle_girth = mm(227);
  EXPECT_TRUE(says(planned(request).cautions, "heel_below_ball"));
  EXPECT_GE(planned(request).length.heel_depth, mm(0));
  request.foot.heel_ankle_girth = mm(228);
  EXPECT_FALSE(says(planned(request).cautions, "heel_below_ball"));
}

}  // namespace
}  // namespace twinround

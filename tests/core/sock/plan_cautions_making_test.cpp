// What a plan must not leave unsaid about gauge, yarn, needle and foot.
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
using test::with_swatch;
using test::woman_in_worsted;
using test::word_in;

TEST(GaugeCautions, EachSourceOfGaugeSaysWhatItIsWorth) {
  PlanRequest request = woman_in_worsted();
  EXPECT_TRUE(says(planned(request).cautions, "flat_swatch"));
  request.swatch.fabric = Fabric::rib;
  const auto rib = find_code(planned(request).cautions, "rib_swatch");
  ASSERT_TRUE(rib.has_value());
  EXPECT_EQ(number_in(*rib, "contraction"), 0.70);
  EXPECT_FALSE(says(planned(request).cautions, "flat_swatch"));
  request.swatch = SwatchInput{};
  const auto label = find_code(planned(request).cautions, "guessed_gauge");
  ASSERT_TRUE(label.has_value());
  EXPECT_EQ(number_in(*label, "category"), 4);
  EXPECT_FALSE(says(planned(request).cautions, "flat_swatch"));
}

TEST(GaugeCautions, AnUnwashedSwatchSaysSo) {
  PlanRequest request = woman_in_worsted();
  EXPECT_FALSE(says(planned(request).cautions, "unwashed_swatch"));
  request.swatch.washed = false;
  EXPECT_TRUE(says(planned(request).cautions, "unwashed_swatch"));
  request.swatch.readings.clear();  // no swatch at all
  EXPECT_FALSE(says(planned(request).cautions, "unwashed_swatch"));
}

TEST(GaugeCautions, AStretchFarPastGeometryIsDoubted) {
  // 20 stitches of 9.976922 mm at most: 15 % over that is 229.47 mm.
  PlanRequest request = woman_in_worsted();
  request.swatch.stretched_width = mm(229.4);
  EXPECT_FALSE(says(planned(request).cautions, "stretch_doubtful"));
  request.swatch.stretched_width = mm(229.5);
  const auto doubt = find_code(planned(request).cautions, "stretch_doubtful");
  ASSERT_TRUE(doubt.has_value());
  EXPECT_NEAR(*number_in(*doubt, "measuredMm"), 11.475, 1e-9);
  EXPECT_NEAR(*number_in(*doubt, "limitMm"), 9.976922, 5e-7);
}

// Weighed so that the loop is `share` of geometry's; a swatch of this many grams.
PlanRequest weighed(double share, double grams) {
  PlanRequest request = woman_in_worsted();
  const double loop_mm = planned(request).yarn.loop.mm() * share;
  request.swatch.mass = Mass::from_g(grams);
  request.swatch.mass_stitches = grams * 2000 / loop_mm;  // 2 m a gram
  return request;
}

TEST(YarnCautions, TwoLoopsOverFifteenPercentApartSayWhichInputToDoubt) {
  for (const double share : {0.85 + 1e-6, 1.0, 1.15 - 1e-6}) {
    EXPECT_FALSE(says(planned(weighed(share, 20)).cautions, "yarn_sources_disagree")) << share;
  }
  for (const double share : {0.85 - 1e-6, 0.5, 1.15 + 1e-6, 2.0}) {
    SCOPED_TRACE(share);
    const auto apart = find_code(planned(weighed(share, 20)).cautions, "yarn_sources_disagree");
    ASSERT_TRUE(apart.has_value());
    EXPECT_NEAR(*number_in(*apart, "apart"), share - 1, 1e-9);
    EXPECT_NEAR(*number_in(*apart, "geometryMm"), 19.95384, 5e-6);
    EXPECT_EQ(apart->field, word_in(*apart, "doubt"));
  }
}

TEST(YarnCautions, ALightSwatchIsDoubtedForItsWeighing) {
  // A scale of whole grams is off by 0.29 g: over 5 % of less than 5.8 g.
  const auto doubt = [](double grams) {
    return word_in(*find_code(planned(weighed(1.3, grams)).cautions, "yarn_sources_disagree"),
                   "doubt");
  };
  EXPECT_EQ(doubt(5.7), "/swatch/massG");
  EXPECT_NE(doubt(5.9), "/swatch/massG");
}

TEST(YarnCautions, AWeighedSwatchWithoutABallSaysWhatIsMissing) {
  PlanRequest request = weighed(1, 20);
  request.yarn.ball_mass.reset();
  request.yarn.ball_length.reset();
  const Plan plan = planned(request);
  EXPECT_TRUE(says(plan.cautions, "mass_needs_ball"));
  EXPECT_TRUE(says(plan.cautions, "yarn_guessed"));
  EXPECT_FALSE(plan.yarn.weighed);
}

// A ball so long that sqrt(tex)/l is this.
PlanRequest with_tightness(double tightness) {
  PlanRequest request = woman_in_worsted();
  const double root_tex = tightness * planned(request).yarn.loop.cm();
  request.yarn.ball_length = Length::from_m(100000 / (root_tex * root_tex));
  return request;
}

TEST(YarnCautions, FabricIsLooseUnderTenAndFirmOverThirteenAndAHalf) {
  struct Row {
    double tightness = 0;
    Firmness firmness = Firmness::usual;
  };
  for (const Row& row : std::vector<Row>{{8, Firmness::loose},
                                         {10 - 1e-9, Firmness::loose},
                                         {10 + 1e-9, Firmness::usual},
                                         {13.5 - 1e-9, Firmness::usual},
                                         {13.5 + 1e-9, Firmness::firm},
                                         {20, Firmness::firm}}) {
    SCOPED_TRACE(row.tightness);
    const Plan plan = planned(with_tightness(row.tightness));
    EXPECT_EQ(plan.firmness, row.firmness);
    EXPECT_EQ(says(plan.cautions, "loose_fabric"), row.firmness == Firmness::loose);
    EXPECT_EQ(says(plan.cautions, "firm_fabric"), row.firmness == Firmness::firm);
  }
}

// The pair needs 190.82793 m; a margin that makes it so many metres to buy.
PlanRequest needing(double metres) {
  PlanRequest request = woman_in_worsted();
  request.yarn_margin = metres / planned(request).yarn.need.pair.m() - 1;
  return request;
}

TEST(YarnCautions, BallsAreJustWithinTwoPercentOfAWholeOne) {
  struct Row {
    double metres = 0;
    int balls = 0;
    bool just = false;
  };
  for (const Row& row : std::vector<Row>{{195.9, 1, false},
                                         {196.1, 1, true},
                                         {199.8, 1, true},
                                         {200.2, 2, true},
                                         {203.9, 2, true},
                                         {204.1, 2, false}}) {
    SCOPED_TRACE(row.metres);
    const Plan plan = planned(needing(row.metres));
    EXPECT_NEAR(plan.yarn.need.with_margin.m(), row.metres, 1e-9);
    EXPECT_EQ(plan.yarn.balls->count, row.balls);
    EXPECT_EQ(plan.yarn.balls->just, row.just);
    // Hardly any left over, or a last ball hardly begun: opposite words.
    const auto just = find_code(plan.cautions, "balls_just");
    const auto begun = find_code(plan.cautions, "balls_barely_begun");
    ASSERT_EQ(just.has_value(), row.just && row.balls == 1);
    ASSERT_EQ(begun.has_value(), row.just && row.balls == 2);
    if (just) {
      EXPECT_NEAR(*number_in(*just, "spareM"), 200 - row.metres, 1e-9);
    }
    if (begun) {
      EXPECT_NEAR(*number_in(*begun, "overM"), row.metres - 200, 1e-9);
    }
  }
}

TEST(NeedleCautions, NoCableLongEnoughIsSaid) {
  // 4 n/(2 g_s) + 400 over 1500 mm: more than 550 mm round, stitches of 50 mm on a foot of 400.
  PlanRequest request = with_swatch(woman_in_worsted(), 4, 6, 200);
  request.foot.ball_girth = mm(400);
  request.girth_ease = 0.20;
  request.foot.heel_ankle_girth = mm(560);
  request.leg_height = mm(400);
  request.stitch_count = 12;
  const Plan plan = planned(request);
  EXPECT_NEAR(plan.needle.cable_least.mm(), 1600, 1e-9);
  EXPECT_FALSE(plan.needle.cable_buy.has_value());
  EXPECT_TRUE(says(plan.cautions, "no_cable_long_enough"));
  EXPECT_FALSE(says(planned(woman_in_worsted()).cautions, "no_cable_long_enough"));
}

TEST(FootCautions, AnEstimatedFootSaysSo) {
  PlanRequest request = woman_in_worsted();
  EXPECT_FALSE(says(planned(request).cautions, "foot_estimated"));
  request.foot.ball_girth.reset();
  request.foot.body = Body::woman;
  EXPECT_EQ(find_code(planned(request).cautions, "foot_estimated")->field, "/foot/ballGirthMm");
  request.foot.length.reset();
  request.foot.shoe = ShoeInput{ShoeScale::eu, 39};
  EXPECT_EQ(find_code(planned(request).cautions, "foot_estimated")->field, "/foot/lengthMm");
}

TEST(FootCautions, AnEstimatedHeelSaysWhatItWasTestedWith) {
  PlanRequest request = woman_in_worsted();
  EXPECT_FALSE(says(planned(request).cautions, "girths_estimated"));
  request.foot.heel_ankle_girth.reset();
  const auto estimated = find_code(planned(request).cautions, "girths_estimated");
  ASSERT_TRUE(estimated.has_value());
  EXPECT_NEAR(*number_in(*estimated, "heelMm"), 330.6, 1e-9);  // 1.45 x 228
}

}  // namespace
}  // namespace twinround

// The feet of ANSUR II (2012; 4082 men, 1986 women; its rows are those of core/facts/feet.cpp): a
// sock for the mean foot goes over that foot's heel, and one for the widest calves widens or is
// refused.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "../sock/sock_examples.h"
#include "feet.h"

namespace twinround {
namespace {

using test::mean_foot;
using test::mm;
using test::planned;
using test::says;
using test::with_rib;
using test::with_swatch;
using test::woman_in_worsted;

double mean_of(const AdultFeet& feet, FootMeasure measure) {
  return feet.row(measure).mean;
}

constexpr double kLegMm = 200;

// The dense ends of the categories from fingering to worsted, rounds 1.4 times as many.
const std::vector<double> kOverFourIn = {32, 26, 24, 20};

TEST(SurveyedFeet, ASockForTheMeanFootGoesOverItsHeel) {
  for (const AdultFeet* feet : {&women_feet(), &men_feet()}) {
    for (const double stitches : kOverFourIn) {
      for (const int column : {1, 2, 3}) {
        SCOPED_TRACE(std::to_string(stitches) + " over 4 in, k" + std::to_string(column));
        const PlanRequest request = with_rib(
            with_swatch(mean_foot(*feet, kLegMm), stitches, 1.4 * stitches, 101.6), column, column);
        const Plan plan = planned(request);
        EXPECT_LE(plan.heel_use, 0.85);
        EXPECT_FALSE(says(plan.cautions, "heel_tight"));
        EXPECT_FALSE(says(plan.cautions, "heel_will_not_pass"));
        // And without anybody's heel measured, over the widest in twenty.
        PlanRequest unmeasured = request;
        unmeasured.foot.heel_ankle_girth.reset();
        EXPECT_LE(planned(unmeasured).heel_use, 0.85);
      }
    }
  }
}

TEST(SurveyedFeet, TheEstimatedHeelIsNoSmallerThanTheMeanOneMeasured) {
  for (const AdultFeet* feet : {&women_feet(), &men_feet()}) {
    PlanRequest request = mean_foot(*feet, kLegMm);
    request.foot.heel_ankle_girth.reset();
    EXPECT_GT(heel_to_pass(planned(request).foot).mm(),
              mean_of(*feet, FootMeasure::heel_ankle_girth));
  }
}

// Whether every height of the leg passes, by the plan's own edge and the page's rule: 0.85.
bool passes_the_edge(const Plan& plan) {
  const double widest = plan.edge_stitches.value() * plan.widest_girth.mm() / plan.stitches.value();
  return plan.leg_fit.edge_girth.mm() <= 0.85 * widest + 1e-9;
}

TEST(SurveyedFeet, TheWidestCalfInTwentyOnAMeanFootIsWidenedFor) {
  // Knee height, over the calf's widest place at 1.38 foot lengths.
  for (const AdultFeet* feet : {&women_feet(), &men_feet()}) {
    for (const double stitches : kOverFourIn) {
      SCOPED_TRACE(std::to_string(stitches) + " over 4 in");
      PlanRequest request = with_swatch(mean_foot(*feet, kLegMm), stitches, 1.4 * stitches, 101.6);
      request.foot.calf_girth = mm(feet->row(FootMeasure::calf_girth).p95);
      request.leg_height = 1.45 * *request.foot.length;
      const Result<Plan> result = make_plan(request);
      ASSERT_TRUE(result.ok());
      const Plan& plan = result.value();
      EXPECT_FALSE(plan.widening.empty());
      EXPECT_GT(plan.edge_stitches, plan.stitches);
      EXPECT_EQ(plan.edge_stitches.value() %
                    (plan.widening.back().rib.knit + plan.widening.back().rib.purl),
                0);
      EXPECT_TRUE(says(plan.cautions, "leg_widened"));
      EXPECT_TRUE(passes_the_edge(plan));
    }
  }
}

TEST(SurveyedFeet, AWideCalfIsRefusedWhereItsRibCannotWidenSoFar) {
  // Columns of 12 cannot grow. The widest calf in a hundred on a tube of one repeat too few.
  PlanRequest request = with_rib(mean_foot(men_feet(), kLegMm), 12, 12);
  request.foot.calf_girth = mm(men_feet().row(FootMeasure::calf_girth).p99);
  request.leg_height = 1.45 * *request.foot.length;
  request.stitch_count = 48;
  const Result<Plan> result = make_plan(request);
  if (result.ok()) {
    EXPECT_TRUE(passes_the_edge(result.value()));
  } else {
    EXPECT_TRUE(says(result.problems(), "leg_too_wide"));
  }
  request.stitch_count = 24;
  EXPECT_TRUE(says(make_plan(request).problems(), "leg_too_wide"));
}

TEST(SurveyedFeet, ACrewSockOnTheMeanLegIsNotWidened) {
  // A leg of 200 mm ends well below the calf: none of these needs more stitches than the foot.
  for (const AdultFeet* feet : {&women_feet(), &men_feet()}) {
    for (const double stitches : kOverFourIn) {
      const PlanRequest request =
          with_swatch(mean_foot(*feet, kLegMm), stitches, 1.4 * stitches, 101.6);
      EXPECT_TRUE(planned(request).widening.empty()) << stitches;
    }
  }
}

}  // namespace
}  // namespace twinround

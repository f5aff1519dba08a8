// The foot of a plan: measured, or as shoe and body suggest.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "plan.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::number_in;
using test::planned;
using test::told;
using test::woman_in_worsted;

PlanRequest in_shoe(ShoeScale scale, double size, std::optional<Body> body) {
  PlanRequest request = woman_in_worsted();
  request.foot = FootInput{};
  request.foot.shoe = ShoeInput{scale, size};
  request.foot.body = body;
  return request;
}

std::vector<std::string> problems_of(const PlanRequest& request) {
  return told(make_plan(request).problems());
}

TEST(PlanFoot, MeasuredIsNotEstimated) {
  const PlannedFoot foot = planned(woman_in_worsted()).foot;
  for (const FootFigure& figure :
       {foot.length, foot.ball_girth, foot.heel_girth, foot.ankle_girth, foot.calf_girth}) {
    EXPECT_FALSE(figure.estimated);
    EXPECT_EQ(figure.spread.mm(), 0);
  }
  EXPECT_EQ(foot.calf_girth.value.mm(), 373);
}

TEST(PlanFoot, GirthsNotMeasuredAreSharesOfTheBallAndMarked) {
  PlanRequest request = woman_in_worsted();
  request.foot.heel_ankle_girth.reset();
  request.foot.ankle_girth.reset();
  request.foot.calf_girth.reset();
  const Plan plan = planned(request);
  EXPECT_TRUE(plan.foot.heel_girth.estimated);
  EXPECT_TRUE(plan.foot.ankle_girth.estimated);
  EXPECT_TRUE(plan.foot.calf_girth.estimated);
  EXPECT_NEAR(plan.foot.heel_girth.value.mm(), 310.08, 1e-9);   // 1.36 x 228, for the drawing
  EXPECT_NEAR(plan.foot.ankle_girth.value.mm(), 212.04, 1e-9);  // 0.93 x 228
  EXPECT_NEAR(plan.foot.calf_girth.value.mm(), 364.8, 1e-9);    // 1.60 x 228
  // The test that binds is with a large heel: 1.45 x 228 = 330.6 on 399.0769.
  EXPECT_NEAR(plan.heel_use, 0.8284118, 5e-7);
  // Its depth is drawn with the usual one: 310.08/2 - 35.1165.
  EXPECT_NEAR(plan.length.heel_depth.mm(), 119.9235, 1e-9);
}

TEST(PlanFoot, AShoeAndABodyStandInForAFoot) {
  // EU 39: 37 x 6.67 = 246.79 mm; a woman's ball 86.9 + 0.573 x 246.79 = 228.3107.
  const Plan woman = planned(in_shoe(ShoeScale::eu, 39, Body::woman));
  EXPECT_NEAR(woman.foot.length.value.mm(), 246.79, 1e-9);
  EXPECT_NEAR(woman.foot.ball_girth.value.mm(), 228.31067, 1e-9);
  EXPECT_TRUE(woman.foot.length.estimated);
  EXPECT_TRUE(woman.foot.ball_girth.estimated);
  EXPECT_NEAR(woman.foot.length.spread.mm(), 6.67, 1e-9);  // one size
  // 9.4 left over, and 0.573 x 6.67 = 3.8219 carried from the length, in quadrature.
  EXPECT_NEAR(woman.foot.ball_girth.spread.mm(), 10.1473, 5e-5);
  // A man's: 92.2 + 0.590 x 246.79.
  const Plan man = planned(in_shoe(ShoeScale::eu, 39, Body::man));
  EXPECT_NEAR(man.foot.ball_girth.value.mm(), 237.8061, 1e-9);
}

TEST(PlanFoot, WhatWasMeasuredWinsOverTheShoe) {
  PlanRequest request = in_shoe(ShoeScale::eu, 44, Body::woman);
  request.foot.length = mm(246);
  Plan plan = planned(request);
  EXPECT_EQ(plan.foot.length.value.mm(), 246);
  EXPECT_FALSE(plan.foot.length.estimated);
  EXPECT_NEAR(plan.foot.ball_girth.value.mm(), 227.858, 1e-9);  // 86.9 + 0.573 x 246
  EXPECT_NEAR(plan.foot.ball_girth.spread.mm(), 9.4, 1e-9);
  request.foot.ball_girth = mm(230);
  plan = planned(request);
  EXPECT_EQ(plan.foot.ball_girth.value.mm(), 230);
  EXPECT_FALSE(plan.foot.ball_girth.estimated);
}

TEST(PlanFoot, AShoeThatIsNoFootIsRefusedAtItsSize) {
  for (const double size : {80.0, 400.0}) {
    for (const std::string& problem :
         problems_of(in_shoe(ShoeScale::mondopoint, size, Body::woman))) {
      EXPECT_NE(problem, "shoe_out_of_range@/foot/shoe/size") << size;
    }
  }
  for (const double size : {0.0, 79.9, 400.1}) {
    EXPECT_EQ(problems_of(in_shoe(ShoeScale::mondopoint, size, Body::woman)),
              (std::vector<std::string>{"shoe_out_of_range@/foot/shoe/size"}))
        << size;
  }
  const std::vector<Problem> problems =
      make_plan(in_shoe(ShoeScale::mondopoint, 401, Body::man)).problems();
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(number_in(problems.front(), "lengthMm"), 401);
  EXPECT_EQ(number_in(problems.front(), "min"), 80);
  EXPECT_EQ(number_in(problems.front(), "max"), 400);
}

TEST(PlanFoot, AGirthThatIsNoFootsIsRefusedToo) {
  // A child's 0.97 x 82 = 79.54 is under 80; 0.97 x 83 = 80.51 is not.
  EXPECT_EQ(problems_of(in_shoe(ShoeScale::mondopoint, 82, Body::child)),
            (std::vector<std::string>{"girth_out_of_range@/foot/shoe/size"}));
  for (const std::string& problem : problems_of(in_shoe(ShoeScale::mondopoint, 83, Body::child))) {
    EXPECT_NE(problem, "girth_out_of_range@/foot/shoe/size");
  }
}

TEST(PlanFoot, MissingThingsAreNamed) {
  PlanRequest request = woman_in_worsted();
  request.foot.length.reset();
  EXPECT_EQ(problems_of(request), (std::vector<std::string>{"required@/foot/lengthMm"}));
  request = woman_in_worsted();
  request.foot.ball_girth.reset();
  EXPECT_EQ(problems_of(request), (std::vector<std::string>{"required@/foot/ballGirthMm"}));
  EXPECT_EQ(problems_of(in_shoe(ShoeScale::eu, 39, std::nullopt)),
            (std::vector<std::string>{"required@/foot/ballGirthMm"}));
}

TEST(PlanFoot, EveryMissingThingIsNamedAtOnce) {
  PlanRequest request = woman_in_worsted();
  request.foot = FootInput{};
  EXPECT_EQ(problems_of(request),
            (std::vector<std::string>{"required@/foot/lengthMm", "required@/foot/ballGirthMm"}));
}

TEST(PlanFoot, AShoeOutOfRangeDoesNotHideAMissingGirth) {
  EXPECT_EQ(problems_of(in_shoe(ShoeScale::mondopoint, 401, std::nullopt)),
            (std::vector<std::string>{"shoe_out_of_range@/foot/shoe/size",
                                      "required@/foot/ballGirthMm"}));
}

TEST(PlanFoot, TheLegIsEstimatedWhereAnEstimateTellsItsGirth) {
  // The ankle's height is 0.45 x 246 = 110.7 mm, the calf's 1.38 x 246 = 339.5.
  PlanRequest request = woman_in_worsted();
  request.foot.calf_girth.reset();
  const PlannedFoot no_calf = planned(request).foot;
  EXPECT_FALSE(leg_estimated_at(no_calf, mm(110)));
  EXPECT_TRUE(leg_estimated_at(no_calf, mm(111)));
  EXPECT_TRUE(leg_estimated_at(no_calf, mm(400)));
  request = woman_in_worsted();
  request.foot.ankle_girth.reset();
  const PlannedFoot no_ankle = planned(request).foot;
  EXPECT_TRUE(leg_estimated_at(no_ankle, mm(50)));
  EXPECT_TRUE(leg_estimated_at(no_ankle, mm(339)));
  EXPECT_FALSE(leg_estimated_at(no_ankle, mm(340)));
  request.leg_height = mm(340);
  EXPECT_FALSE(planned(request).edge_estimated);
  request.leg_height = mm(200);
  EXPECT_TRUE(planned(request).edge_estimated);
  EXPECT_FALSE(planned(woman_in_worsted()).edge_estimated);
}

}  // namespace
}  // namespace twinround

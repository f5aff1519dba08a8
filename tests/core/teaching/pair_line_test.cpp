#include "pair_line.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "../properties/random_requests.h"
#include "feet.h"
#include "sock_examples.h"
#include "yarn_category.h"

namespace twinround {
namespace {

using test::mean_foot;
using test::mm;
using test::woman_in_worsted;

PlanRequest by_label(PlanRequest request, int category) {
  request.swatch = {};
  request.yarn = {};
  request.yarn.category = category;
  return request;
}

// Every figure of a line against the plan it is of; the balls aside.
void expect_figures_of(const PairLine& line, const Plan& plan) {
  EXPECT_EQ(line.category, plan.category);
  EXPECT_EQ(line.stitches, plan.stitches);
  EXPECT_EQ(line.rounds, plan.length.total);
  EXPECT_DOUBLE_EQ(line.pair.m(), plan.yarn.need.pair.m());
  EXPECT_DOUBLE_EQ(line.with_margin.m(), plan.yarn.need.with_margin.m());
  EXPECT_DOUBLE_EQ(line.yarn_error, plan.yarn.relative_error);
  EXPECT_NEAR(line.sock_mass.g(), plan.yarn.sock_mass->g(), 1e-9);
  EXPECT_NEAR(line.with_margin_mass.g(), plan.yarn.with_margin_mass->g(), 1e-9);
  EXPECT_EQ(line.needle.diameter, plan.needle.name.diameter);
  EXPECT_EQ(line.cable, plan.needle.cable_buy);
  EXPECT_DOUBLE_EQ(line.time.minutes(), plan.time.minutes());
  EXPECT_DOUBLE_EQ(line.time_error, plan.time_error);
}

TEST(PairLine, IsThatOfThePlanInEveryCategory) {
  for (const YarnCategory& category : yarn_categories()) {
    SCOPED_TRACE(category.name);
    const PlanRequest request = by_label(woman_in_worsted(), category.number);
    const Result<PairLine> line = plan_line(request);
    const Result<Plan> plan = make_plan(request);
    ASSERT_EQ(line.ok(), plan.ok());
    if (plan.ok()) expect_figures_of(line.value(), plan.value());
  }
}

TEST(PairLine, ARefusedPlanTellsItsProblems) {
  // A leg of 60 mm ends below the bend of the ankle, whatever the yarn.
  PlanRequest low = by_label(woman_in_worsted(), 4);
  low.leg_height = mm(60);
  const Result<PairLine> line = plan_line(low);
  ASSERT_FALSE(line.ok());
  EXPECT_EQ(test::told(line.problems()), std::vector<std::string>{"leg_too_short@/legHeightMm"});
}

TEST(PairLine, BallsAreOfTheUsualBallWhereNoneIsGiven) {
  // Worsted: 190 m in 100 g. The pair with margin takes more than one such ball, less than two.
  const Result<PairLine> line = plan_line(by_label(woman_in_worsted(), 4));
  ASSERT_TRUE(line.ok());
  EXPECT_GT(line.value().with_margin.m(), 190);
  EXPECT_LT(line.value().with_margin.m(), 380);
  ASSERT_TRUE(line.value().balls);
  EXPECT_EQ(line.value().balls->count, 2);
  EXPECT_TRUE(line.value().ball->usual);
}

TEST(PairLine, ABallOfOnesOwnOverrulesTheUsualOne) {
  PlanRequest request = by_label(woman_in_worsted(), 4);
  request.yarn.ball_mass = Mass::from_g(50);
  request.yarn.ball_length = Length::from_m(70);
  const Result<PairLine> line = plan_line(request);
  ASSERT_TRUE(line.ok() && line.value().balls);
  EXPECT_EQ(line.value().balls->count,
            balls_for(line.value().with_margin, Length::from_m(70)).count);
  EXPECT_FALSE(line.value().ball->usual);
}

TEST(PairLine, WithoutACategoryNoBallIsUsual) {
  PlanRequest request = woman_in_worsted();
  request.yarn = {};
  EXPECT_FALSE(ball_bought(request.yarn));
  const Result<PairLine> line = plan_line(request);
  ASSERT_TRUE(line.ok());
  EXPECT_FALSE(line.value().balls);
}

// Whole pairs of tube socks, margin included, in yards: common practice, no source.
struct Band {
  int category = 0;
  double from_yd = 0;
  double to_yd = 0;
};
const std::vector<Band> kBands = {{4, 250, 330}, {3, 290, 380}, {2, 350, 460}, {1, 390, 500}};

TEST(PairLine, PairsByLabelLieInTheTradesBands) {
  // A woman's to the mid-calf, a man's to above the ankle: the tube socks that the bands are of.
  const std::vector<PlanRequest> feet = {mean_foot(women_feet(), 290), mean_foot(men_feet(), 250)};
  for (const PlanRequest& foot : feet) {
    for (const Band& band : kBands) {
      SCOPED_TRACE(band.category);
      const Result<PairLine> line = plan_line(by_label(foot, band.category));
      ASSERT_TRUE(line.ok());
      EXPECT_GE(line.value().with_margin.yd(), band.from_yd);
      EXPECT_LE(line.value().with_margin.yd(), band.to_yd);
    }
  }
}

TEST(PairLineProperty, IsThatOfThePlanAndTheUsualBallMovesNothing) {
  test::for_random_requests(900, [](const PlanRequest& request, test::Dice&) {
    const Result<PairLine> line = plan_line(request);
    const Result<Plan> plan = make_plan(request);
    ASSERT_EQ(line.ok(), plan.ok());
    if (!plan.ok()) {
      EXPECT_EQ(test::told(line.problems()), test::told(plan.problems()));
      return;
    }
    expect_figures_of(line.value(), plan.value());
    if (plan.value().yarn.balls) {
      EXPECT_EQ(line.value().balls->count, plan.value().yarn.balls->count);
    }
  });
}

}  // namespace
}  // namespace twinround

#include "foot_population.h"

#include <gtest/gtest.h>

#include <cmath>

#include "drive_examples.h"

namespace twinround {
namespace {

using test::mm;

double weight_of(const std::vector<BodyFeet>& feet) {
  double sum = 0;
  for (const BodyFeet& body : feet) {
    for (const LengthCurve& curve : body.lengths) sum += curve.weight;
  }
  return sum;
}

TEST(FootPopulation, WeighsEveryGroupByItsShare) {
  const auto feet = feet_of({{Body::man, 0, 1}, {Body::woman, 0, 2}, {Body::child, 8, 1}});
  ASSERT_EQ(feet.size(), 3u);
  EXPECT_NEAR(weight_of(feet), 1, 1e-12);
  EXPECT_EQ(feet[1].body, Body::woman);
  EXPECT_NEAR(feet[1].lengths.at(0).weight, 0.5, 1e-12);
  ASSERT_EQ(feet[0].lengths.size(), 2u);  // boys and girls
  EXPECT_NEAR(feet[0].lengths[0].weight, 0.125, 1e-12);
  EXPECT_EQ(feet_of({{Body::man, 0, 0}, {Body::woman, 0, 2}}).size(), 1u);
}

TEST(FootPopulation, HasTheYearsThatTheSurveySkipsBetweenTheirNeighbours) {
  for (const int age : {14, 16}) {
    const auto feet = feet_of({{Body::child, age, 1}});
    EXPECT_NEAR(weight_of(feet), 1, 1e-12);
    EXPECT_EQ(feet[0].lengths.size(), 4u);
  }
  for (int age = kYoungest; age <= kOldest; ++age) {
    EXPECT_NEAR(weight_of(feet_of({{Body::child, age, 1}})), 1, 1e-12) << age;
  }
}

// The survey's own lines (standards, ANSUR II): men 92.2 + 0.590 L, residual SD 10.4; women 86.9 +
// 0.573 L, 9.4.
TEST(FootPopulation, HasTheBallGirthsThatTheSurveyDerivesFromLength) {
  const auto women = feet_of(test::women());
  EXPECT_NEAR(women[0].ball.constant.mm(), 86.9, 0.1);
  EXPECT_NEAR(women[0].ball.per_length, 0.573, 0.0006);
  EXPECT_NEAR(women[0].ball.spread.mm(), 9.4, 0.05);
  const auto men = feet_of({{Body::man, 0, 1}});
  EXPECT_NEAR(men[0].ball.constant.mm(), 92.2, 0.1);
  EXPECT_NEAR(men[0].ball.per_length, 0.590, 0.0006);
  EXPECT_NEAR(men[0].ball.spread.mm(), 10.4, 0.05);
}

// From length and ball alone the heel's own mean, deviation and correlations come back.
TEST(FootPopulation, GivesTheHeelBackItsSurveyedFigures) {
  for (const Body body : {Body::woman, Body::man}) {
    const AdultFeet& feet = body == Body::man ? men_feet() : women_feet();
    const GirthGiven heel = feet_of({{body, 0, 1}})[0].heel;
    const MeasureRow& length = feet.row(FootMeasure::foot_length);
    const MeasureRow& ball = feet.row(FootMeasure::ball_girth);
    const MeasureRow& whole = feet.row(FootMeasure::heel_ankle_girth);
    EXPECT_NEAR(heel.mean(mm(length.mean), mm(ball.mean)).mm(), whole.mean, 1e-9);
    const double r = feet.correlation_of(FootMeasure::foot_length, FootMeasure::ball_girth);
    const double on_length = heel.per_length * length.sd;
    const double on_ball = heel.per_ball * ball.sd;
    const double variance = on_length * on_length + on_ball * on_ball +
                            2 * r * on_length * on_ball + heel.spread.mm() * heel.spread.mm();
    EXPECT_NEAR(std::sqrt(variance), whole.sd, 1e-9);
    EXPECT_NEAR((on_length + r * on_ball) / whole.sd,
                feet.correlation_of(FootMeasure::foot_length, FootMeasure::heel_ankle_girth), 1e-9);
    EXPECT_NEAR((on_ball + r * on_length) / whole.sd,
                feet.correlation_of(FootMeasure::ball_girth, FootMeasure::heel_ankle_girth), 1e-9);
  }
}

TEST(FootPopulation, EstimatesAChildsHeelFromTheBall) {
  const GirthGiven heel = feet_of({{Body::child, 8, 1}})[0].heel;
  const Length mean = heel.mean(mm(200), mm(200));
  EXPECT_NEAR(mean.mm(), 1.36 * 200, 1e-9);
  EXPECT_NEAR(mean.mm() + 1.6448536 * heel.sd(mean).mm(), 1.45 * 200, 1e-4);  // the 95th percentile
}

}  // namespace
}  // namespace twinround

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "feet.h"
#include "shoe.h"
#include "units.h"

namespace twinround {
namespace {

// ASSUMPTION, no survey has it: 0.97 of the length, give or take 6 %.
TEST(ChildFeet, TheBallGirthIsAShareOfTheLengthAndItsSpreadWiderThanAnAdults) {
  for (const double mm : {143.0, 166.75, 237.0}) {
    const EstimatedGirth child = ball_girth_from_length(Body::child, Length::from_mm(mm));
    EXPECT_NEAR(child.girth.mm(), 0.97 * mm, 1e-9);
    EXPECT_NEAR(child.spread / child.girth, 0.06, 1e-12);
    const EstimatedGirth woman = ball_girth_from_length(Body::woman, Length::from_mm(246.29));
    EXPECT_GT(child.spread / child.girth, woman.spread / woman.girth);
  }
}

// What the child's 6 % is made of: the scatter of adults about their own share of the length, and
// the distance from that share to the child's.
TEST(ChildFeet, TheSpreadFollowsFromTheAdults) {
  for (const AdultFeet* feet : {&men_feet(), &women_feet()}) {
    const MeasureRow& length = feet->row(FootMeasure::foot_length);
    const MeasureRow& ball = feet->row(FootMeasure::ball_girth);
    const double r = feet->correlation_of(FootMeasure::foot_length, FootMeasure::ball_girth);
    const double cl = length.sd / length.mean;
    const double cb = ball.sd / ball.mean;
    const double scatter = std::sqrt(cl * cl + cb * cb - 2 * r * cl * cb);
    const double shift = 0.97 - ball.mean / length.mean;
    EXPECT_NEAR(scatter, 0.045, 0.001);
    EXPECT_NEAR(std::hypot(scatter, shift), 0.06, 0.005);
  }
}

// Snyder et al. 1977, UM-HSRI-77-17 (derived): mean (SD), mm.
TEST(ChildFeet, LengthsAreTheSurveys) {
  struct Row {
    int age;
    double boys, boys_sd, girls, girls_sd;
  };
  const std::vector<Row> published = {
      {2, 143, 10, 143, 10},  {3, 156, 9, 156, 9},    {4, 167, 10, 167, 10},
      {5, 174, 10, 174, 10},  {6, 185, 11, 185, 11},  {7, 193, 11, 193, 11},
      {8, 203, 12, 203, 12},  {9, 212, 12, 212, 12},  {10, 221, 13, 221, 13},
      {11, 228, 13, 228, 13}, {12, 237, 14, 237, 14}, {13, 249, 16, 235, 12},
      {15, 263, 13, 237, 12}, {17, 266, 15, 236, 11},
  };
  for (const Row& row : published) {
    SCOPED_TRACE(row.age);
    const auto child = child_feet(row.age);
    ASSERT_TRUE(child.has_value());
    EXPECT_EQ(child->age, row.age);
    EXPECT_EQ(child->boys_mean, row.boys);
    EXPECT_EQ(child->boys_sd, row.boys_sd);
    EXPECT_EQ(child->girls_mean, row.girls);
    EXPECT_EQ(child->girls_sd, row.girls_sd);
  }
}

TEST(ChildFeet, AgesTheSurveyHasNoRowForHaveNone) {
  for (const int age : {-1, 0, 1, 14, 16, 18, 40}) EXPECT_FALSE(child_feet(age).has_value()) << age;
}

// Two surveys, one people: boys of 17 (Snyder) are within their spread of the men of ANSUR II, and
// girls of the women.
TEST(ChildFeet, SeventeenYearOldsHaveTheFeetOfAdults) {
  const auto grown = child_feet(17);
  ASSERT_TRUE(grown.has_value());
  EXPECT_NEAR(grown->boys_mean, men_feet().row(FootMeasure::foot_length).mean, grown->boys_sd);
  EXPECT_NEAR(grown->girls_mean, women_feet().row(FootMeasure::foot_length).mean, grown->girls_sd);
}

// A child in size 27 by the European scale: the girth the core must guess is about 155 to 170 mm.
TEST(ChildFeet, AChildInEuropean27HasABallGirthOf155To170) {
  const Length length = foot_from_shoe(ShoeScale::eu, 27).length;
  const Length girth = ball_girth_from_length(Body::child, length).girth;
  EXPECT_GT(girth, Length::from_mm(155));
  EXPECT_LT(girth, Length::from_mm(170));
}

}  // namespace
}  // namespace twinround

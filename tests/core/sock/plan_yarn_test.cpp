// Metres turned into grams and balls, of the sock's own yarn and of another in its place.
#include <gtest/gtest.h>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::find_code;
using test::number_in;
using test::planned;
using test::says;
using test::woman_in_worsted;

PlanRequest with_substitute(double ball_g, double ball_m) {
  PlanRequest request = woman_in_worsted();
  request.yarn.substitute_mass = Mass::from_g(ball_g);
  request.yarn.substitute_length = Length::from_m(ball_m);
  return request;
}

TEST(SubstituteYarn, KeepsTheMetresAndNotTheGrams) {
  // The pair takes 190.83 m, with a tenth more 209.91. The first yarn, 100 g of 200 m, is 500 tex;
  // 50 g of 85 m are 588.2: a sixth thicker (0.1765). 209.91/85 = 2.47 balls, so 3, 45.1 m over.
  const Plan plan = planned(with_substitute(50, 85));
  EXPECT_NEAR(plan.yarn.need.with_margin.m(), 209.911, 1e-3);
  EXPECT_NEAR(plan.yarn.tex, 500, 1e-9);
  ASSERT_TRUE(plan.yarn.substitute.has_value());
  const SubstituteYarn& other = *plan.yarn.substitute;
  EXPECT_NEAR(other.tex, 588.235, 1e-3);
  EXPECT_NEAR(other.thickness_apart, 0.17647, 1e-5);
  EXPECT_NEAR(other.pair_mass.g(), 190.828 * 50 / 85, 1e-3);
  EXPECT_NEAR(other.with_margin_mass.g(), 209.911 * 50 / 85, 1e-3);
  EXPECT_EQ(other.balls.count, 3);
  EXPECT_NEAR(other.balls.spare.m(), 45.089, 1e-3);
  // sqrt(588.235)/1.995384 = 12.15
  EXPECT_NEAR(other.tightness, 12.155, 1e-3);
  EXPECT_EQ(other.firmness, Firmness::usual);
}

TEST(SubstituteYarn, IsToldWhereItsThicknessDiffersByMoreThanATenth) {
  // 500 tex and a tenth: 550 tex are 100 g of 181.8 m.
  EXPECT_FALSE(says(planned(with_substitute(100, 182)).cautions, "substitute_differs"));
  EXPECT_FALSE(says(planned(with_substitute(100, 222)).cautions, "substitute_differs"));  // 450.5
  const auto thick = find_code(planned(with_substitute(100, 181)).cautions, "substitute_differs");
  ASSERT_TRUE(thick.has_value());
  EXPECT_EQ(thick->field, "/yarn/substitute/ballM");
  EXPECT_NEAR(*number_in(*thick, "apart"), 0.10497, 1e-5);
  const auto thin = find_code(planned(with_substitute(100, 223)).cautions, "substitute_differs");
  ASSERT_TRUE(thin.has_value());
  EXPECT_LT(*number_in(*thin, "apart"), 0);
}

TEST(SubstituteYarn, ChangesNothingOfTheSock) {
  const Plan alone = planned(woman_in_worsted());
  const Plan beside = planned(with_substitute(50, 400));
  EXPECT_EQ(beside.stitches, alone.stitches);
  EXPECT_EQ(beside.yarn.need.pair, alone.yarn.need.pair);
  EXPECT_EQ(beside.yarn.pair_mass->g(), alone.yarn.pair_mass->g());
  EXPECT_FALSE(alone.yarn.substitute.has_value());
}

TEST(SubstituteYarn, IsComparedWithTheCategorysUsualYarnWhereThereIsNoBall) {
  // Category 4: 190 m in 100 g (common practice, no source), 526.3 tex.
  PlanRequest request = with_substitute(100, 190);
  request.yarn.ball_mass.reset();
  request.yarn.ball_length.reset();
  const Plan plan = planned(request);
  EXPECT_TRUE(plan.yarn.mass_guessed);
  EXPECT_NEAR(plan.yarn.substitute->thickness_apart, 0, 1e-12);
}

}  // namespace
}  // namespace twinround

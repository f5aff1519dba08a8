#include "shoe.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "units.h"

namespace twinround {
namespace {

double length_of(ShoeScale scale, double size) {
  return foot_from_shoe(scale, size).length.mm();
}
double spread_of(ShoeScale scale, double size) {
  return foot_from_shoe(scale, size).uncertainty.mm();
}

const std::vector<ShoeScale> kScales = {ShoeScale::mondopoint, ShoeScale::eu, ShoeScale::us_men,
                                        ShoeScale::us_women, ShoeScale::uk};

// ISO 9407 and ISO/TS 19407:2015 (read): a Mondopoint size is the length of the foot in mm.
TEST(Shoe, AMondopointSizeIsTheFootsLength) {
  for (const double size : {80.0, 155.0, 245.0, 270.0, 272.5, 400.0}) {
    EXPECT_EQ(length_of(ShoeScale::mondopoint, size), size);
  }
}

// European sizes as read. The rule (size - 2) x 6.67 mm meets them within 0.2 mm and no nearer (36
// is furthest off, by 0.18): to a tenth they are not on one straight line.
TEST(Shoe, EuropeanSizesAreTheirPublishedLengthsWithin0Point2Millimetres) {
  struct Row {
    double size;
    double mm;
  };
  for (const Row& row : std::vector<Row>{{36, 226.6}, {40, 253.4}, {42, 266.8}, {44, 280.2}}) {
    EXPECT_NEAR(length_of(ShoeScale::eu, row.size), row.mm, 0.2) << row.size;
  }
}

TEST(Shoe, EuropeanSizesStepByTwoThirdsOfACentimetre) {
  EXPECT_NEAR(length_of(ShoeScale::eu, 43) - length_of(ShoeScale::eu, 42), 20.0 / 3.0, 0.005);
  EXPECT_NEAR(length_of(ShoeScale::eu, 2), 0.0, 1e-9);
}

// Brannock scale (read): men (size + 22)/3 in. The value is printed to a tenth of a millimetre.
TEST(Shoe, UsMensTenIs270Point9) {
  EXPECT_NEAR(length_of(ShoeScale::us_men, 10), 270.9, 0.05);
  EXPECT_NEAR(foot_from_shoe(ShoeScale::us_men, 10).length.in(), 32.0 / 3.0, 1e-12);
  EXPECT_NEAR(foot_from_shoe(ShoeScale::us_men, 8.5).length.in(), 30.5 / 3.0, 1e-12);
}

// Brannock scale (read): women (size + 21)/3 in.
TEST(Shoe, UsWomensEightIs245Point5) {
  EXPECT_NEAR(length_of(ShoeScale::us_women, 8), 245.5, 0.05);
  EXPECT_NEAR(foot_from_shoe(ShoeScale::us_women, 8).length.in(), 29.0 / 3.0, 1e-12);
  EXPECT_NEAR(foot_from_shoe(ShoeScale::us_women, 6.5).length.in(), 27.5 / 3.0, 1e-12);
}

TEST(Shoe, AUsWomansNumberIsOneMoreThanAMansOfTheSameFoot) {
  for (const double size : {4.0, 7.5, 12.0}) {
    EXPECT_NEAR(length_of(ShoeScale::us_women, size + 1), length_of(ShoeScale::us_men, size), 1e-9);
  }
}

// UK, from memory: two rules a size apart, (size + 23)/3 and (size + 24)/3 in.
TEST(Shoe, AUkSizeIsTheMiddleOfItsTwoRulesAndItsBandHoldsASizePastEither) {
  for (const double size : {3.0, 8.0, 8.5, 12.0}) {
    SCOPED_TRACE(size);
    const double lower = Length::from_in((size + 23) / 3).mm();
    const double upper = Length::from_in((size + 24) / 3).mm();
    const double one_size = Length::from_in(1).mm() / 3;
    const double middle = length_of(ShoeScale::uk, size);
    const double spread = spread_of(ShoeScale::uk, size);
    EXPECT_NEAR(middle, (lower + upper) / 2, 1e-9);
    EXPECT_NEAR(middle - spread, lower - one_size, 1e-9);
    EXPECT_NEAR(middle + spread, upper + one_size, 1e-9);
  }
}

TEST(Shoe, TheUncertaintyIsOneSizeAndInTheUkHalfASizeMore) {
  for (const ShoeScale scale : {ShoeScale::eu, ShoeScale::us_men, ShoeScale::us_women}) {
    EXPECT_NEAR(spread_of(scale, 9), length_of(scale, 10) - length_of(scale, 9), 1e-9);
  }
  EXPECT_NEAR(spread_of(ShoeScale::uk, 9),
              1.5 * (length_of(ShoeScale::uk, 10) - length_of(ShoeScale::uk, 9)), 1e-9);
  EXPECT_EQ(spread_of(ShoeScale::mondopoint, 270), 5.0);  // its step, from memory
}

TEST(Shoe, TheUncertaintyIsTheSameForEverySize) {
  for (const ShoeScale scale : kScales) EXPECT_EQ(spread_of(scale, 3), spread_of(scale, 40));
}

TEST(Shoe, ALargerSizeIsALongerFootOnEveryScale) {
  for (const ShoeScale scale : kScales) {
    for (double size = 0; size < 60; size += 0.5) {
      EXPECT_GT(length_of(scale, size + 0.5), length_of(scale, size));
    }
  }
}

// Four scales' names for much the same shoe; they agree within their own uncertainty.
TEST(Shoe, TheScalesMeetWithinTheirUncertainty) {
  const double man = length_of(ShoeScale::us_men, 10);
  EXPECT_NEAR(length_of(ShoeScale::uk, 9), man, spread_of(ShoeScale::uk, 9));
  EXPECT_NEAR(length_of(ShoeScale::eu, 43), man, spread_of(ShoeScale::eu, 43));
}

TEST(Shoe, AnAbsurdSizeGivesAnAbsurdLengthForTheCallerToRefuse) {
  EXPECT_LT(length_of(ShoeScale::eu, 0), 0.0);
  EXPECT_GT(length_of(ShoeScale::uk, 60), 600.0);
  EXPECT_TRUE(std::isnan(length_of(ShoeScale::us_men, std::nan(""))));
}

struct SizesRow {
  ShoeScale scale;
  double least, most;  // foot, mm
  double from, to;     // 0, 0: none
};

// EU: (size - 2) x 6.67; UK (size + 23.5)/3 in; US women (size + 21)/3 in, men (size + 22)/3 in.
TEST(Shoe, SizesOfFeetAreThoseThatLieBetweenThem) {
  for (const SizesRow& row : std::vector<SizesRow>{{ShoeScale::eu, 226.78, 253.46, 36, 40},
                                                   {ShoeScale::eu, 226.79, 253.45, 37, 39},
                                                   {ShoeScale::eu, 93.38, 100.05, 16, 17},
                                                   {ShoeScale::us_women, 228.6, 254, 6, 9},
                                                   {ShoeScale::us_women, 228.7, 253.9, 6.5, 8.5},
                                                   {ShoeScale::us_men, 254, 279.4, 8, 11},
                                                   {ShoeScale::uk, 241.31, 275.16, 5.5, 8.5},
                                                   {ShoeScale::uk, 241.29, 275.17, 5, 9},
                                                   {ShoeScale::mondopoint, 241, 270, 245, 270}}) {
    const auto sizes = shoe_sizes(row.scale, Length::from_mm(row.least), Length::from_mm(row.most));
    ASSERT_TRUE(sizes.has_value()) << row.least;
    EXPECT_EQ(sizes->from, row.from) << row.least;
    EXPECT_EQ(sizes->to, row.to) << row.most;
  }
}

// Grown-ups' size 1: UK 24.5/3 in = 207.43 mm, US men 194.73, US women 186.27.
TEST(Shoe, ChildrensEnglishAndAmericanSizesAreNotTold) {
  const auto sizes = [](ShoeScale scale, double least, double most) {
    return shoe_sizes(scale, Length::from_mm(least), Length::from_mm(most));
  };
  EXPECT_EQ(sizes(ShoeScale::uk, 150, 215.9)->from, 1);
  EXPECT_EQ(sizes(ShoeScale::uk, 150, 207.44)->to, 1);
  EXPECT_FALSE(sizes(ShoeScale::uk, 150, 207.42).has_value());
  EXPECT_FALSE(sizes(ShoeScale::us_men, 150, 194.72).has_value());
  EXPECT_FALSE(sizes(ShoeScale::us_women, 150, 186.26).has_value());
}

TEST(Shoe, NoSizeIsMadeBetweenTwo) {
  EXPECT_FALSE(shoe_sizes(ShoeScale::eu, Length::from_mm(240.2), Length::from_mm(246.7)));
}

}  // namespace
}  // namespace twinround

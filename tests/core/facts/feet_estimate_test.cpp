#include "feet.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

#include "units.h"

namespace twinround {
namespace {

// The 95th percentile of a normal curve, in standard deviations.
constexpr double kZ95 = 1.645;

struct Sex {
  const char* name;
  const AdultFeet& feet;
};
std::vector<Sex> both_sexes() {
  return {{"men", men_feet()}, {"women", women_feet()}};
}

double normal_share_below(double z) {
  return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

// ANSUR II: the line of ball girth on foot length, against the rows it was drawn through.
// Tolerances are what rounding leaves: of the slope half a unit of its third place and of the
// correlation's; of the girth at the mean length half a unit of the slope times the length and of
// the start.
TEST(FeetEstimate, TheBallGirthLineAgreesWithTheRowsAndTheirCorrelation) {
  struct Line {
    Body body;
    const Sex sex;
  };
  for (const Line& line :
       {Line{Body::man, {"men", men_feet()}}, Line{Body::woman, {"women", women_feet()}}}) {
    SCOPED_TRACE(line.sex.name);
    const MeasureRow& length = line.sex.feet.row(FootMeasure::foot_length);
    const MeasureRow& ball = line.sex.feet.row(FootMeasure::ball_girth);
    const double r =
        line.sex.feet.correlation_of(FootMeasure::foot_length, FootMeasure::ball_girth);

    const auto girth_at = [&](double mm) {
      return ball_girth_from_length(line.body, Length::from_mm(mm)).girth.mm();
    };
    const double slope = (girth_at(300) - girth_at(200)) / 100;
    EXPECT_NEAR(slope, r * ball.sd / length.sd, 0.001);
    EXPECT_NEAR(girth_at(length.mean), ball.mean, 0.0005 * length.mean + 0.05);

    const double spread = ball_girth_from_length(line.body, Length::from_mm(250)).spread.mm();
    EXPECT_NEAR(spread, ball.sd * std::sqrt(1 - r * r), 0.05);
  }
}

TEST(FeetEstimate, TheBallGirthOfAManAndAWomanIsThePublishedLine) {
  const EstimatedGirth man = ball_girth_from_length(Body::man, Length::from_mm(270));
  EXPECT_NEAR(man.girth.mm(), 92.2 + 0.590 * 270, 1e-9);
  EXPECT_EQ(man.spread.mm(), 10.4);
  const EstimatedGirth woman = ball_girth_from_length(Body::woman, Length::from_mm(245));
  EXPECT_NEAR(woman.girth.mm(), 86.9 + 0.573 * 245, 1e-9);
  EXPECT_EQ(woman.spread.mm(), 9.4);
}

double median_share(const AdultFeet& feet, FootMeasure measure) {
  return feet.row(measure).p50 / feet.row(FootMeasure::ball_girth).p50;
}

// ANSUR II: the median share of the ball girth, both sexes, within a hundredth.
TEST(FeetEstimate, TheHeelIs1Point36TimesTheBallInBothSexes) {
  EXPECT_EQ(kHeelOfBallMedian, 1.36);
  for (const Sex& sex : both_sexes()) {
    EXPECT_NEAR(median_share(sex.feet, FootMeasure::heel_ankle_girth), kHeelOfBallMedian, 0.01);
  }
}

// Ankle and calf differ by sex; one share serves for both and lies in their middle.
TEST(FeetEstimate, AnkleAndCalfSharesAreTheMiddleOfTheSexes) {
  EXPECT_EQ(kAnkleOfBall, 0.93);
  EXPECT_EQ(kCalfOfBall, 1.60);
  struct Share {
    FootMeasure measure;
    double ours, men, women;
  };
  const std::vector<Share> shares = {
      {FootMeasure::ankle_girth, kAnkleOfBall, 0.905, 0.947},
      {FootMeasure::calf_girth, kCalfOfBall, 1.556, 1.639},
  };
  for (const Share& share : shares) {
    const double men = median_share(men_feet(), share.measure);
    const double women = median_share(women_feet(), share.measure);
    EXPECT_NEAR(men, share.men, 0.0005);
    EXPECT_NEAR(women, share.women, 0.0005);
    EXPECT_NEAR(share.ours, (men + women) / 2, 0.005);
  }
}

// ANSUR II: heel/ball is 1.28 to 1.45 from the 5th to the 95th percentile. From the rows and their
// correlation, to first order, within a hundredth (the upper end comes out as 1.443, so that 1.45
// errs on the side of a heel that must pass).
TEST(FeetEstimate, TheHeelsShareOfTheBallReaches1Point45) {
  EXPECT_EQ(kHeelOfBallP95, 1.45);
  for (const Sex& sex : both_sexes()) {
    SCOPED_TRACE(sex.name);
    const MeasureRow& heel = sex.feet.row(FootMeasure::heel_ankle_girth);
    const MeasureRow& ball = sex.feet.row(FootMeasure::ball_girth);
    const double r =
        sex.feet.correlation_of(FootMeasure::heel_ankle_girth, FootMeasure::ball_girth);
    const double ch = heel.sd / heel.mean;
    const double cb = ball.sd / ball.mean;
    const double cv = std::sqrt(ch * ch + cb * cb - 2 * r * ch * cb);
    const double middle = heel.mean / ball.mean;
    EXPECT_NEAR(middle * (1 - kZ95 * cv), 1.28, 0.01);
    EXPECT_NEAR(middle * (1 + kZ95 * cv), kHeelOfBallP95, 0.01);
    EXPECT_LE(middle * (1 + kZ95 * cv), kHeelOfBallP95);
  }
}

// A sock top that stretches to 15 in (National Archives of Australia, knitting circular, 1916,
// read) passes 98.6 % of the men of ANSUR II; one of 16 in (Papers Past WAITA19400501, read) all of
// them.
TEST(FeetEstimate, FifteenInchesPassNearlyEveryMansHeelAndSixteenAllOfThem) {
  const MeasureRow& heel = men_feet().row(FootMeasure::heel_ankle_girth);
  const auto share = [&](double inches) {
    return normal_share_below((Length::from_in(inches).mm() - heel.mean) / heel.sd);
  };
  EXPECT_NEAR(share(15), 0.986, 0.003);
  EXPECT_GT(share(16), 1.0 - 1.0 / 4082);
}

}  // namespace
}  // namespace twinround

// Whose feet a drive knits for, as the published surveys have them: how long, and what girths go
// with a length. Grown-ups were soldiers, younger and fitter than the public; children's girths
// nobody surveyed.
#pragma once

#include <vector>

#include "feet.h"
#include "units.h"

namespace twinround {

// `share`: how many of the feet, in parts of any size.
struct FeetGroup {
  Body body = Body::woman;
  int age_years = 0;  // of children alone
  double share = 1;
};

inline constexpr int kYoungest = 2;  // the ends of the children's survey
inline constexpr int kOldest = 17;

// A normal curve of foot lengths; `weight` is its share of all feet.
struct LengthCurve {
  Length mean;
  Length sd;
  double weight = 0;
};

// What a girth is, give or take, where the length (and for the heel the ball girth) is known:
// constant + per_length x length + per_ball x ball; `spread` and `spread_share` of it in quadrature
// are its standard deviation.
struct GirthGiven {
  Length constant;
  double per_length = 0;
  double per_ball = 0;
  Length spread;
  double spread_share = 0;

  Length mean(Length foot, Length ball) const {
    return constant + per_length * foot + per_ball * ball;
  }
  Length sd(Length mean_girth) const;
};

// Grown-ups: length, ball and heel-ankle girth normal together by the survey's means, deviations
// and correlations (ANSUR II). Children: length normal by year of age (Snyder 1977), boys and girls
// by halves (ASSUMPTION); ages 14 and 16 lie midway between their neighbours (ASSUMPTION); the ball
// girth as core/facts estimates it; the heel 1.36 of the ball, its 95th percentile 1.45.
struct BodyFeet {
  Body body = Body::woman;
  std::vector<LengthCurve> lengths;
  GirthGiven ball;
  GirthGiven heel;
};

// The weights of all curves add up to 1; one entry a body. Preconditions: some share is above
// nothing, and children's ages lie within 2 to 17.
std::vector<BodyFeet> feet_of(const std::vector<FeetGroup>& groups);

}  // namespace twinround

// Measured feet of adults and children, and the proportions that stand in for what was not
// measured.
#pragma once

#include <array>
#include <cstddef>
#include <optional>

#include "units.h"

namespace twinround {

enum class Body { woman, man, child };

enum class FootMeasure {
  foot_length,
  ball_girth,
  heel_ankle_girth,
  ankle_girth,
  calf_girth,
  bone_height
};
inline constexpr int kFootMeasures = 6;

// One row of the adult table, mm. Percentiles are whole millimetres of the people themselves, not
// of a normal curve: the curve meets p5 and p95 within 3 mm, but misses p1 and p99 by up to 13
// (calf).
struct MeasureRow {
  double mean = 0;
  double sd = 0;
  double p1 = 0, p5 = 0, p50 = 0, p95 = 0, p99 = 0;
};

// Adults of one sex: the rows in the order of FootMeasure, and their correlations. They are
// soldiers: younger and fitter than the public.
struct AdultFeet {
  int n = 0;
  std::array<MeasureRow, kFootMeasures> rows;
  std::array<std::array<double, kFootMeasures>, kFootMeasures> correlation;

  const MeasureRow& row(FootMeasure m) const { return rows[static_cast<std::size_t>(m)]; }
  double correlation_of(FootMeasure a, FootMeasure b) const {
    return correlation[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)];
  }
};
const AdultFeet& men_feet();
const AdultFeet& women_feet();

// Foot length of children by age in whole years, mm; nothing where the survey has no row (under 2,
// 14, 16, over 17). Up to 12 boys and girls share one row.
struct ChildRow {
  int age = 0;
  double boys_mean = 0, boys_sd = 0, girls_mean = 0, girls_sd = 0;
};
std::optional<ChildRow> child_feet(int age);

// Ball girth estimated from foot length. `spread` is the residual standard deviation (children:
// ASSUMPTION, no survey has their girths).
struct EstimatedGirth {
  Length girth;
  Length spread;
};
// The line that the estimate lies on: girth = constant + per_length x foot length, give or take
// `spread` and `spread_share` of the girth.
struct GirthLine {
  Length constant;
  double per_length = 0;
  Length spread;
  double spread_share = 0;
};
GirthLine ball_girth_line(Body body);
EstimatedGirth ball_girth_from_length(Body body, Length foot_length);

// Shares of the ball girth that stand in for a girth not measured. All derived from ANSUR II (the
// rows in feet.cpp); the heel's are of both sexes alike, the others lie between the sexes.
inline constexpr double kHeelOfBallMedian = 1.36;  // heel-ankle; for the drawing and heel depth
inline constexpr double kHeelOfBallP95 = 1.45;     // its 95th percentile; the test that binds
inline constexpr double kAnkleOfBall = 0.93;       // men 0.905, women 0.947 (medians)
inline constexpr double kCalfOfBall = 1.60;        // men 1.556, women 1.639 (medians)

}  // namespace twinround

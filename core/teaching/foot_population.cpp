#include "foot_population.h"

#include <cmath>
#include <optional>

#include "quadrature.h"

namespace twinround {

namespace {

constexpr double kP95InSds = 1.6448536270;  // of a normal curve

GirthGiven heel_of_ball() {
  GirthGiven heel;
  heel.per_ball = kHeelOfBallMedian;
  heel.spread_share = (kHeelOfBallP95 / kHeelOfBallMedian - 1.0) / kP95InSds;
  return heel;
}

// The regression of the ball on the length.
GirthGiven ball_of(const AdultFeet& feet) {
  const MeasureRow& length = feet.row(FootMeasure::foot_length);
  const MeasureRow& ball = feet.row(FootMeasure::ball_girth);
  const double r = feet.correlation_of(FootMeasure::foot_length, FootMeasure::ball_girth);
  GirthGiven given;
  given.per_length = r * ball.sd / length.sd;
  given.constant = Length::from_mm(ball.mean - given.per_length * length.mean);
  given.spread = Length::from_mm(ball.sd * std::sqrt(1.0 - r * r));
  return given;
}

// The regression of the heel on length and ball together.
GirthGiven heel_of(const AdultFeet& feet) {
  const MeasureRow& length = feet.row(FootMeasure::foot_length);
  const MeasureRow& ball = feet.row(FootMeasure::ball_girth);
  const MeasureRow& heel = feet.row(FootMeasure::heel_ankle_girth);
  const double between = feet.correlation_of(FootMeasure::foot_length, FootMeasure::ball_girth);
  const double to_length =
      feet.correlation_of(FootMeasure::foot_length, FootMeasure::heel_ankle_girth);
  const double to_ball =
      feet.correlation_of(FootMeasure::ball_girth, FootMeasure::heel_ankle_girth);
  const double unshared = 1.0 - between * between;
  const double on_length = (to_length - between * to_ball) / unshared;
  const double on_ball = (to_ball - between * to_length) / unshared;
  GirthGiven given;
  given.per_length = on_length * heel.sd / length.sd;
  given.per_ball = on_ball * heel.sd / ball.sd;
  given.constant =
      Length::from_mm(heel.mean - given.per_length * length.mean - given.per_ball * ball.mean);
  given.spread =
      Length::from_mm(heel.sd * std::sqrt(1.0 - on_length * to_length - on_ball * to_ball));
  return given;
}

BodyFeet without_lengths(Body body) {
  BodyFeet feet;
  feet.body = body;
  if (body == Body::child) {
    const GirthLine line = ball_girth_line(body);
    feet.ball = {line.constant, line.per_length, 0, line.spread, line.spread_share};
    feet.heel = heel_of_ball();
  } else {
    const AdultFeet& surveyed = body == Body::man ? men_feet() : women_feet();
    feet.ball = ball_of(surveyed);
    feet.heel = heel_of(surveyed);
  }
  return feet;
}

void add_children(BodyFeet& feet, int age, double weight) {
  const auto row = child_feet(age);
  if (!row) {  // a year that the survey skips
    add_children(feet, age - 1, weight / 2);
    return add_children(feet, age + 1, weight / 2);
  }
  const auto curve = [weight](double mean, double sd) {
    return LengthCurve{Length::from_mm(mean), Length::from_mm(sd), weight / 2};
  };
  feet.lengths.push_back(curve(row->boys_mean, row->boys_sd));
  feet.lengths.push_back(curve(row->girls_mean, row->girls_sd));
}

void add_group(BodyFeet& feet, const FeetGroup& group, double weight) {
  if (group.body == Body::child) return add_children(feet, group.age_years, weight);
  const AdultFeet& surveyed = group.body == Body::man ? men_feet() : women_feet();
  const MeasureRow& length = surveyed.row(FootMeasure::foot_length);
  feet.lengths.push_back({Length::from_mm(length.mean), Length::from_mm(length.sd), weight});
}

}  // namespace

Length GirthGiven::sd(Length mean_girth) const {
  return Length::from_mm(in_quadrature(spread.mm(), spread_share * mean_girth.mm()));
}

std::vector<BodyFeet> feet_of(const std::vector<FeetGroup>& groups) {
  double parts = 0;
  for (const FeetGroup& group : groups) parts += group.share;
  std::vector<BodyFeet> all;
  for (const Body body : {Body::child, Body::woman, Body::man}) {
    BodyFeet feet = without_lengths(body);
    for (const FeetGroup& group : groups) {
      if (group.body == body && group.share > 0) add_group(feet, group, group.share / parts);
    }
    if (!feet.lengths.empty()) all.push_back(feet);
  }
  return all;
}

}  // namespace twinround

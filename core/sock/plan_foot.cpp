#include <string>

#include "plan_parts.h"
#include "quadrature.h"
#include "rounding.h"

namespace twinround {

namespace {

// What counts as a foot at all: the request's own limits for a measured one.
constexpr Length kLeastFoot = Length::from_mm(80);
constexpr Length kMostFoot = Length::from_mm(400);

bool is_foot(Length length) {
  return length >= kLeastFoot && length <= kMostFoot;
}

Problem required(const char* field, const char* what) {
  return {
      field, "required", {}, {}, std::string("Give ") + what + ", or a shoe size and whose it is."};
}

Problem not_a_foot(const char* code, const char* name, Length value) {
  return {"/foot/shoe/size",
          code,
          {{name, value.mm()}, {"min", kLeastFoot.mm()}, {"max", kMostFoot.mm()}},
          {},
          "This size means " + std::to_string(round_half_up(value.mm())) +
              " mm, and a foot has 80 to 400. Check the size and its scale."};
}

FootFigure measured(Length value) {
  return {value, false, Length::from_mm(0)};
}

FootFigure measured_or(const std::optional<Length>& value, Length estimate) {
  return value ? measured(*value) : FootFigure{estimate, true, Length::from_mm(0)};
}

// The residual spread and what the unsure length carries over to the girth, in quadrature.
FootFigure estimated_ball_girth(Body body, const FootFigure& length) {
  const EstimatedGirth estimate = ball_girth_from_length(body, length.value);
  const Length carried = ball_girth_line(body).per_length * length.spread;
  return {estimate.girth, true, Length::from_mm(in_quadrature(estimate.spread.mm(), carried.mm()))};
}

// Fills what is known; says what is missing or no foot.
void settle_length(const FootInput& foot, PlannedFoot& planned, std::vector<Problem>& problems) {
  if (foot.length) {
    planned.length = measured(*foot.length);
  } else if (foot.shoe) {
    const ShoeFoot shoe = foot_from_shoe(foot.shoe->scale, foot.shoe->size);
    planned.length = {shoe.length, true, shoe.uncertainty};
    if (!is_foot(shoe.length)) {
      problems.push_back(not_a_foot("shoe_out_of_range", "lengthMm", shoe.length));
    }
  } else {
    problems.push_back(required("/foot/lengthMm", "the foot's length"));
  }
}

void settle_ball_girth(const FootInput& foot, PlannedFoot& planned,
                       std::vector<Problem>& problems) {
  if (foot.ball_girth) {
    planned.ball_girth = measured(*foot.ball_girth);
  } else if (!foot.body) {
    problems.push_back(required("/foot/ballGirthMm", "the girth round the ball of the foot"));
  } else if (problems.empty()) {  // without a length there is nothing to estimate from
    planned.ball_girth = estimated_ball_girth(*foot.body, planned.length);
    const Length girth = planned.ball_girth.value;
    if (!is_foot(girth)) problems.push_back(not_a_foot("girth_out_of_range", "girthMm", girth));
  }
}

}  // namespace

Result<PlannedFoot> plan_foot(const FootInput& foot) {
  PlannedFoot planned;
  std::vector<Problem> problems;
  settle_length(foot, planned, problems);
  settle_ball_girth(foot, planned, problems);
  if (!problems.empty()) return problems;

  const Length ball = planned.ball_girth.value;
  planned.heel_girth = measured_or(foot.heel_ankle_girth, kHeelOfBallMedian * ball);
  planned.ankle_girth = measured_or(foot.ankle_girth, kAnkleOfBall * ball);
  planned.calf_girth = measured_or(foot.calf_girth, kCalfOfBall * ball);
  return planned;
}

bool leg_estimated_at(const PlannedFoot& foot, Length height) {
  const double feet_up = height / foot.length.value;
  const bool on_ankle = feet_up < kCalfHeight && foot.ankle_girth.estimated;
  const bool on_calf = feet_up > kAnkleHeight && foot.calf_girth.estimated;
  return on_ankle || on_calf;
}

Length heel_to_pass(const PlannedFoot& foot) {
  return foot.heel_girth.estimated ? kHeelOfBallP95 * foot.ball_girth.value : foot.heel_girth.value;
}

}  // namespace twinround

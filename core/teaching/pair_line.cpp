#include "pair_line.h"

#include "yarn_category.h"

namespace twinround {

std::optional<BallBought> ball_bought(const YarnChoice& yarn) {
  if (yarn.ball_mass && yarn.ball_length) {
    return BallBought{*yarn.ball_mass, *yarn.ball_length, false};
  }
  const auto category = yarn.category ? yarn_category(*yarn.category) : std::nullopt;
  if (!category) return {};
  const Length reach = Length::from_m(category->m_per_100g);
  return BallBought{kUsualBall, reach * (kUsualBall / Mass::from_g(100)), true};
}

PairLine line_of(const Plan& plan, const YarnChoice& yarn) {
  PairLine line;
  line.category = plan.category;
  line.stitches = plan.stitches;
  line.rounds = plan.length.total;
  line.pair = plan.yarn.need.pair;
  line.with_margin = plan.yarn.need.with_margin;
  line.yarn_error = plan.yarn.relative_error;
  line.sock_mass = plan.yarn.sock_mass.value_or(Mass());
  line.with_margin_mass = plan.yarn.with_margin_mass.value_or(Mass());
  // Not put into the request: a usual ball would turn a weighed swatch into a measure of the yarn.
  line.ball = ball_bought(yarn);
  if (line.ball) line.balls = balls_for(line.with_margin, line.ball->length);
  line.needle = plan.needle.name;
  line.cable = plan.needle.cable_buy;
  line.time = plan.time;
  line.time_error = plan.time_error;
  return line;
}

Result<PairLine> plan_line(const PlanRequest& request) {
  const Result<Plan> plan = make_plan(request);
  if (!plan.ok()) return plan.problems();
  return line_of(plan.value(), request.yarn);
}

}  // namespace twinround

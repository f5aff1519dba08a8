// Metres turned into grams and balls, of the sock's own yarn and of a substitute.
#include "plan_parts.h"

namespace twinround {

namespace {

// What the label says: this mass measures this length.
struct Label {
  Mass mass;
  Length length;
  bool guessed = false;
};

Label label_of(const YarnChoice& yarn, const FabricFigures& fabric) {
  if (yarn.ball_mass && yarn.ball_length) return {*yarn.ball_mass, *yarn.ball_length, false};
  return {Mass::from_g(100), Length::from_m(fabric.category.m_per_100g), true};
}

Mass mass_of(Length need, const Label& label) {
  return label.mass * (need / label.length);
}

SubstituteYarn substitute_figures(const Label& substitute, const Label& first, const YarnNeed& need,
                                  Length loop) {
  SubstituteYarn other;
  other.tex = tex_of(substitute.mass, substitute.length);
  other.thickness_apart = other.tex / tex_of(first.mass, first.length) - 1.0;
  other.pair_mass = mass_of(need.pair, substitute);
  other.with_margin_mass = mass_of(need.with_margin, substitute);
  other.balls = balls_for(need.with_margin, substitute.length);
  other.tightness = tightness(other.tex, loop);
  other.firmness = firmness_of(other.tightness);
  return other;
}

}  // namespace

YarnFigures plan_yarn(const PlanRequest& request, const FabricFigures& fabric,
                      const YarnNeed& need) {
  YarnFigures yarn;
  yarn.need = need;
  yarn.loop = fabric.loop();
  yarn.weighed = fabric.weighed_loop.has_value();
  if (yarn.weighed) yarn.geometry_loop = fabric.geometry_loop;
  yarn.relative_error = yarn_error(fabric.gauge.stitches_error, fabric.gauge.rounds_error,
                                   yarn.weighed ? kWeighedError : kGeometryError);
  const Label label = label_of(request.yarn, fabric);
  yarn.tex = tex_of(label.mass, label.length);
  yarn.mass_guessed = label.guessed;
  yarn.sock_mass = mass_of(need.sock, label);
  yarn.pair_mass = mass_of(need.pair, label);
  yarn.with_margin_mass = mass_of(need.with_margin, label);
  if (!label.guessed) yarn.balls = balls_for(need.with_margin, label.length);
  if (request.yarn.substitute_mass && request.yarn.substitute_length) {
    const Label other{*request.yarn.substitute_mass, *request.yarn.substitute_length, false};
    yarn.substitute = substitute_figures(other, label, need, yarn.loop);
  }
  return yarn;
}

}  // namespace twinround

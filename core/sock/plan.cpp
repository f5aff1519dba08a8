#include "plan.h"

#include <algorithm>
#include <numeric>

#include "pace.h"
#include "plan_parts.h"
#include "quadrature.h"
#include "rounding.h"
#include "spiral.h"
#include "tube.h"

namespace twinround {

namespace {

// Everything that hangs on the count: worked out for the plan itself and for each choice beside it.
struct SockOfCount {
  Toe toe;
  SockLength length;
  WidenedLeg leg;
  YarnNeed yarn;
  Duration time;
};

Stitches edge_stitches(const WidenedLeg& leg, Stitches n) {
  return leg.stages.empty() ? n : leg.stages.back().rib.stitches;
}

int worked_stitches(const YarnInput& yarn) {
  return yarn.toe_stitches + yarn.spiral_stitches + yarn.widening_stitches + yarn.cuff_stitches;
}

// The bind-off must give as far as the widest girth the edge passes: the heel, or a wider calf if
// measured.
Length girth_past_edge(const PlannedFoot& foot) {
  const Length heel = heel_to_pass(foot);
  return foot.calf_girth.estimated ? heel : std::max(heel, foot.calf_girth.value);
}

Leg leg_of(const PlannedFoot& foot) {
  return {foot.length.value, foot.ankle_girth.value, foot.calf_girth.value};
}

// Toe and length alone: all that a refused count still has to say.
Result<SockOfCount> lengths_of_count(const PlanRequest& request, const FabricFigures& fabric,
                                     const PlannedFoot& foot, Stitches n) {
  SockOfCount sock;
  const bool is_knit = request.known_toe && request.known_toe->counts.back() == n.value();
  sock.toe = is_knit ? *request.known_toe
                     : shape_toe({n, foot.length.value, fabric.gauge.rounds, request.toe_share,
                                  request.tip_share, request.toe_shape});
  const Rounds toe_rounds(static_cast<int>(sock.toe.counts.size()));
  const Result<SockLength> length =
      divide_length({foot.length.value, foot.heel_girth.value, request.leg_height, request.cuff,
                     request.length_ease, fabric.gauge.rounds, toe_rounds});
  if (!length.ok()) return length.problems();
  sock.length = length.value();
  return sock;
}

// Stitches of the rib's rounds below the cuff: before the first widening round, and from it on.
void count_rib_stitches(const SockOfCount& sock, Stitches n, YarnInput& yarn) {
  const int spiral = sock.length.spiral.value();
  const std::vector<WideningStage>& stages = sock.leg.stages;
  const int plain = stages.empty() ? spiral : stages.front().round;
  yarn.spiral_stitches = plain * n.value();
  for (std::size_t i = 0; i < stages.size(); ++i) {
    const int end = i + 1 < stages.size() ? stages[i + 1].round : spiral;
    yarn.widening_stitches += (end - stages[i].round) * stages[i].rib.stitches.value();
  }
  yarn.cuff_stitches = sock.length.cuff.value() * edge_stitches(sock.leg, n).value();
}

Result<SockOfCount> sock_of_count(const PlanRequest& request, const FabricFigures& fabric,
                                  const PlannedFoot& foot, Stitches n) {
  const Result<SockOfCount> lengths = lengths_of_count(request, fabric, foot, n);
  if (!lengths.ok()) return lengths.problems();
  SockOfCount sock = lengths.value();
  const Result<WidenedLeg> leg = widen_leg({leg_of(foot),
                                            request.leg_height,
                                            {request.rib.knit, request.rib.purl, n},
                                            fabric.widest,
                                            fabric.gauge.rounds,
                                            sock.length.spiral,
                                            sock.length.cuff});
  if (!leg.ok()) return leg.problems();
  sock.leg = leg.value();

  YarnInput yarn;
  yarn.loop = fabric.loop();
  yarn.cast_on = sock.toe.cast_on;
  yarn.toe_stitches = std::accumulate(sock.toe.counts.begin(), sock.toe.counts.end(), 0);
  count_rib_stitches(sock, n, yarn);
  yarn.edge_girth = girth_past_edge(foot);
  yarn.margin = request.yarn_margin;
  sock.yarn = yarn_need(yarn);
  sock.time =
      knitting_time(2 * worked_stitches(yarn), sock.length.total, request.stitches_per_minute);
  return sock;
}

std::vector<Choice> choices_around(const PlanRequest& request, const FabricFigures& fabric,
                                   const PlannedFoot& foot, Stitches n) {
  std::vector<Choice> choices;
  for (const Stitches count : counts_around(n, request.rib.repeat())) {
    const Result<SockOfCount> sock = sock_of_count(request, fabric, foot, count);
    if (!sock.ok()) continue;  // its toe leaves no room for the rib, or its leg cannot be widened
    Choice choice;
    choice.stitches = count;
    choice.girth = count / fabric.gauge.stitches;
    choice.ease = ease_of(count, foot.ball_girth.value, fabric.gauge.stitches);
    choice.heel_use = girth_use(heel_to_pass(foot), count, fabric.widest);
    choice.halves_alike = halves_alike(count, request.rib.repeat());
    choice.yarn_pair = sock.value().yarn.pair;
    choice.time = sock.value().time;
    choices.push_back(choice);
  }
  return choices;
}

// Her own count is obeyed; without one, or beside it, the advice.
Result<Stitches> decided_count(const PlanRequest& request, const Result<CountAdvice>& advice) {
  if (request.stitch_count) return accept_count(*request.stitch_count, request.rib.repeat());
  if (!advice.ok()) return advice.problems();
  return advice.value().count;
}

template <class T>
std::vector<T> joined(std::vector<T> some, const std::vector<T>& more) {
  some.insert(some.end(), more.begin(), more.end());
  return some;
}

// Where the ease is off whatever the count, or no count could be advised at all, another rib would
// do better.
bool rib_is_the_trouble(const Plan& plan, const CountAdvice* advice, const CountInput& input) {
  return !advice || !count_is_good(advice->count, input) ||
         clearly_above(kTightestEase, plan.girth_ease) ||
         clearly_above(plan.girth_ease, kLoosestEase);
}

Plan composed(const PlanRequest& request, const FabricFigures& fabric, const PlannedFoot& foot,
              Stitches n, const SockOfCount& sock) {
  Plan plan;
  plan.gauge = fabric.gauge;
  plan.readings = fabric.readings;
  plan.category = fabric.category.number;
  plan.category_given = fabric.category_given;
  plan.foot = foot;
  plan.rib = request.rib;
  plan.stitches = n;
  plan.girth_ease = ease_of(n, foot.ball_girth.value, fabric.gauge.stitches);
  plan.finished_girth = n / fabric.gauge.stitches;
  plan.rest_girth = plan.finished_girth * fabric.contraction.factor;
  plan.widest_girth = fabric.widest * n.value();
  plan.pass_girth = kPassUse * plan.widest_girth;
  plan.heel_use = girth_use(heel_to_pass(foot), n, fabric.widest);
  plan.halves_alike = halves_alike(n, request.rib.repeat());
  plan.choices = choices_around(request, fabric, foot, n);
  plan.toe = sock.toe;
  plan.length = sock.length;
  const int narrow =
      sock.leg.stages.empty() ? sock.length.spiral.value() : sock.leg.stages.front().round;
  plan.spiral_rounds = Rounds(narrow);
  plan.widening_rounds = sock.length.spiral - Rounds(narrow);
  plan.period = period(request.rib);
  if (request.rib.leans() || request.rib.rounds_per_shift == 0) {
    plan.pitch = pitch(request.rib, fabric.gauge.stitches, fabric.gauge.rounds);
  }
  plan.leg_fit = sock.leg.fit;
  plan.edge_estimated = leg_estimated_at(foot, request.leg_height);
  plan.widening = sock.leg.stages;
  plan.edge_stitches = edge_stitches(sock.leg, n);
  plan.yarn = plan_yarn(request, fabric, sock.yarn);
  plan.yarn.last_round = yarn_of_last_round(sock.yarn.bind_off, plan.yarn.loop, plan.edge_stitches);
  plan.serves = feet_served({foot.length.value, request.leg_height, request.length_ease,
                             plan.girth_ease, std::max(plan.heel_use, plan.leg_fit.worst_use)});
  plan.needle = choose_needle(request.swatch.needle, fabric.category, plan.edge_stitches,
                              fabric.gauge.stitches);
  if (!plan.widening.empty()) {
    const LegFit unwidened = fit_leg(leg_of(foot), request.leg_height, n, fabric.widest);
    plan.larger_needle = larger_needle(unwidened, fabric.gauge.stitches, plan.needle.name.diameter);
  }
  if (fabric.tightness) plan.firmness = firmness_of(*fabric.tightness);
  plan.time = sock.time;
  plan.girth_error = fabric.gauge.stitches_error;
  plan.rest_girth_error = fabric.rest_error;
  plan.heel_use_error = fabric.widest_error;
  // The counts of stitches and of rounds move with the gauge, and the pace stands by itself.
  plan.time_error = in_quadrature(fabric.gauge.stitches_error, fabric.gauge.rounds_error,
                                  pace_error(request.stitches_per_minute));
  plan_rounds(plan, request.toe_shape);
  return plan;
}

}  // namespace

Result<Plan> make_plan(const PlanRequest& request) {
  const Result<PlannedFoot> foot = plan_foot(request.foot);
  const Result<FabricFigures> fabric = plan_fabric(request);
  std::vector<Problem> problems = joined(foot.problems(), fabric.problems());
  if (const auto stretch = stretch_problem(request.swatch)) problems.push_back(*stretch);
  if (!foot.ok() || !fabric.ok()) return problems;

  const CountInput count_input{foot.value().ball_girth.value, heel_to_pass(foot.value()),
                               fabric.value().gauge.stitches, fabric.value().widest,
                               request.rib.repeat(),          request.girth_ease};
  const Result<CountAdvice> advice = advise_count(count_input);
  const Result<Stitches> n = decided_count(request, advice);
  // Where no count stands, the shortest toe there is still tells whether the lengths are at fault.
  const Result<SockOfCount> sock =
      n.ok() ? sock_of_count(request, fabric.value(), foot.value(), n.value())
             : lengths_of_count(request, fabric.value(), foot.value(), Stitches(kLeastCount));
  problems = joined(joined(problems, n.problems()), sock.problems());
  if (!problems.empty()) return problems;

  Plan plan = composed(request, fabric.value(), foot.value(), n.value(), sock.value());
  const CountAdvice* advised = advice.ok() ? &advice.value() : nullptr;
  if (advised) plan.advised = advised->count;
  if (rib_is_the_trouble(plan, advised, count_input)) {
    plan.ribs_that_fit = ribs_that_fit(count_input);
  }
  plan.cautions = joined(cautions_of_fit(request, fabric.value(), plan, advised),
                         cautions_of_making(request, fabric.value(), plan));
  plan.working = joined(working_of_fit(request, fabric.value(), plan),
                        working_of_making(request, fabric.value(), plan));
  return plan;
}

}  // namespace twinround

#include "adjust.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

#include "pace.h"
#include "rounding.h"
#include "tube.h"

namespace twinround {
namespace {

Problem past_the_plan(int rounds_done, Rounds total) {
  return {"/needles/roundsDone",
          "past_the_plan",
          {{"roundsDone", static_cast<double>(rounds_done)},
           {"totalRounds", static_cast<double>(total.value())}},
          {},
          "The plan has fewer rounds than that."};
}

Problem more_than_a_layer(double stitches, Stitches round) {
  return {"/needles/stitches",
          "more_than_a_layer",
          {{"given", stitches}, {"layer", round.value() / 2.0}},
          {},
          "One layer of the tube has half of the round's stitches. Count one layer only."};
}

Problem more_rounds_than_done(double rounds, int rounds_done) {
  return {"/needles/rounds",
          "more_rounds_than_done",
          {{"given", rounds}, {"roundsDone", static_cast<double>(rounds_done)}},
          {},
          "More rounds were counted than are done."};
}

// What cannot be so, of what was typed of the toe.
std::vector<Problem> problems_of_toe(const NeedleReading& toe, const AdjustRequest& request,
                                     const Plan& planned) {
  std::vector<Problem> problems;
  if (toe.stitches && *toe.stitches > planned.stitches.value()) {
    problems.push_back(more_than_a_layer(*toe.stitches, planned.stitches));
  }
  if (toe.rounds && *toe.rounds > request.rounds_done) {
    problems.push_back(more_rounds_than_done(*toe.rounds, request.rounds_done));
  }
  return problems;
}

// What is worked in one sock from a round on, that round knit.
struct Ahead {
  int rounds = 0;
  int stitches = 0;
};

Ahead ahead_of(const Plan& plan, int round) {
  Ahead ahead;
  int done = 0;
  for (const RoundSpan& span : plan.rounds) {
    done += span.rounds;
    const int rounds = std::clamp(done - round, 0, span.rounds);
    ahead.rounds += rounds;
    ahead.stitches += rounds * span.stitches;
  }
  return ahead;
}

// A count's plan, gone on with from a round.
Way way_from(Remedy remedy, const Plan& plan, const AdjustRequest& request, int round) {
  const Ahead ahead = ahead_of(plan, round);
  Way way;
  way.remedy = remedy;
  way.stitches = plan.stitches;
  way.girth_ease = plan.girth_ease;
  way.finished_girth = plan.finished_girth;
  way.heel_use = plan.heel_use;
  way.passes = at_least(kPassUse, plan.heel_use) && !plan.leg_fit.fails_from;
  way.total = plan.length.total;
  way.from = round;
  way.to_go = Rounds(ahead.rounds);
  way.lost = Rounds(request.rounds_done - round);
  way.over = Rounds(std::max(0, round - way.total.value()));
  way.rib_from = static_cast<int>(plan.toe.counts.size()) + 1;
  way.yarn_pair = plan.yarn.need.pair;
  way.yarn_to_go = remedy == Remedy::restart
                       ? plan.yarn.need.pair
                       : 2 * (ahead.stitches * plan.yarn.loop + plan.yarn.need.bind_off + kTail);
  way.time_to_go = knitting_time(2 * ahead.stitches, way.to_go, request.plan.stitches_per_minute);
  return way;
}

// From the toe on the needles to another count: increases left out, or added before the rib.
std::optional<Way> way_by_change(const AdjustRequest& request, const Toe& begun, PlanRequest known,
                                 Stitches count) {
  const std::optional<TurnedToe> turned = turn_toe(begun, request.rounds_done, count);
  if (!turned) return {};
  known.stitch_count = count.value();
  known.known_toe = turned->toe;
  const Result<Plan> plan = make_plan(known);
  if (!plan.ok()) return {};
  Way way = way_from(Remedy::change, plan.value(), request, turned->from);
  way.steps = turned->steps;
  return way;
}

// How far a way's girth lies from the one asked for, as a share of it.
double girth_off(const Way& way, double ease_asked) {
  return std::abs((1 + way.girth_ease) / (1 + ease_asked) - 1);
}

// Whether another count would bring the girth so little nearer that no round is worth it.
bool is_near_enough(const Way& keep, const Way& other, double ease_asked) {
  const double off = girth_off(keep, ease_asked);
  return at_least(kGirthToKeep, off) || at_least(kGirthWorth, off - girth_off(other, ease_asked));
}

Remedy advice_among(const std::vector<Way>& ways, double ease_asked) {
  const Way& first = ways.front();
  const bool can_stay = first.remedy == Remedy::keep && first.passes;
  // Both other ways end on the same count.
  if (can_stay && (ways.size() == 1 || is_near_enough(first, ways.back(), ease_asked))) {
    return Remedy::keep;
  }
  for (const Way& way : ways) {
    if (way.remedy == Remedy::change) return Remedy::change;
  }
  return ways.back().remedy;
}

}  // namespace

Result<Adjustment> adjust(const AdjustRequest& request) {
  const Result<Plan> begun = make_plan(request.plan);
  if (!begun.ok()) return begun.problems();
  const Plan& planned = begun.value();
  if (request.rounds_done > planned.length.total.value()) {
    return past_the_plan(request.rounds_done, planned.length.total);
  }
  if (request.toe) {
    std::vector<Problem> problems = problems_of_toe(*request.toe, request, planned);
    if (!problems.empty()) return problems;
  }

  Adjustment adjustment;
  adjustment.planned = planned;
  adjustment.known = planned;
  if (!request.toe) return adjustment;
  adjustment.gauge = gauge_on_needles(planned.gauge, *request.toe, request.is_swatch_foreign);

  PlanRequest known = request.plan;
  known.known_gauge = adjustment.gauge->gauge;
  if (adjustment.gauge->by_toe_alone && adjustment.gauge->has_stitches) {
    // Nothing of another fabric is left: neither its wash nor its weight nor how far it stretched.
    known.swatch = {.washed = false,
                    .needle = request.plan.swatch.needle,
                    .readings = {adjustment.gauge->reading}};
  }
  // A count of her own says what ease she wants.
  if (request.plan.stitch_count) known.girth_ease = planned.girth_ease;
  PlanRequest as_it_is = known;
  as_it_is.stitch_count = planned.stitches.value();
  as_it_is.known_toe = planned.toe;
  const Result<Plan> kept = make_plan(as_it_is);
  if (kept.ok()) {
    adjustment.known = kept.value();
    adjustment.ways.push_back(way_from(Remedy::keep, kept.value(), request, request.rounds_done));
  }
  known.stitch_count.reset();
  const Result<Plan> advised = make_plan(known);
  const bool is_another = advised.ok() && advised.value().stitches != planned.stitches;
  if (is_another) {
    const Stitches count = advised.value().stitches;
    if (const auto way = way_by_change(request, planned.toe, known, count)) {
      adjustment.ways.push_back(*way);
    }
    adjustment.ways.push_back(way_from(Remedy::restart, advised.value(), request, 0));
  }
  if (adjustment.ways.empty()) return kept.problems();
  adjustment.advised = advice_among(adjustment.ways, known.girth_ease);
  return adjustment;
}

}  // namespace twinround

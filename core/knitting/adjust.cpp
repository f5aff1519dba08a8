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

// Knitting time of the pair from a round on, that round not yet knit.
Duration time_from(const Plan& plan, double stitches_per_minute, int round) {
  int done = 0;
  int stitches = 0;
  for (const RoundSpan& span : plan.rounds) {
    const int ahead = std::clamp(done + span.rounds - round, 0, span.rounds);
    stitches += ahead * span.stitches;
    done += span.rounds;
  }
  return knitting_time(2 * stitches, Rounds(std::max(0, done - round)), stitches_per_minute);
}

// What a count comes to; where the needles stand is filled in by the ways below.
Way way_of(Remedy remedy, const Plan& plan) {
  Way way;
  way.remedy = remedy;
  way.stitches = plan.stitches;
  way.girth_ease = plan.girth_ease;
  way.finished_girth = plan.finished_girth;
  way.heel_use = plan.heel_use;
  way.passes = at_least(kPassUse, plan.heel_use) && !plan.leg_fit.fails_from;
  way.total = plan.length.total;
  way.yarn_pair = plan.yarn.need.pair;
  return way;
}

void go_on_from(Way& way, const Plan& plan, const AdjustRequest& request, int round) {
  way.to_go = Rounds(std::max(0, plan.length.total.value() - round));
  way.lost = Rounds(request.rounds_done - round);
  way.time_to_go = time_from(plan, request.plan.stitches_per_minute, round);
}

// The last round of the toe that is knit and has no more than `count` stitches; nothing where even
// the cast-on has more.
std::optional<int> round_to_turn_at(const Toe& toe, int rounds_done, Stitches count) {
  if (toe.cast_on > count) return {};
  int round = 0;
  const int knit = std::min(rounds_done, static_cast<int>(toe.counts.size()));
  for (int r = 1; r <= knit; ++r) {
    if (toe.counts[static_cast<std::size_t>(r - 1)] <= count.value()) round = r;
  }
  return round;
}

// From the toe on the needles to another count: increases left out, or added before the rib.
std::optional<Way> way_by_change(const AdjustRequest& request, const Plan& begun,
                                 const Plan& advised) {
  const std::optional<int> round =
      round_to_turn_at(begun.toe, request.rounds_done, advised.stitches);
  if (!round) return {};
  const Stitches there = *round == 0
                             ? begun.toe.cast_on
                             : Stitches(begun.toe.counts[static_cast<std::size_t>(*round - 1)]);
  Way way = way_of(Remedy::change, advised);
  const int missing = (advised.stitches - there).value();
  constexpr int kStitchesAnIncreaseRound = 4;
  way.increases = (missing + kStitchesAnIncreaseRound - 1) / kStitchesAnIncreaseRound;
  go_on_from(way, advised, request, *round);
  return way;
}

// Whether the girth that the kept count gives lies near enough to the one asked for.
bool girth_is_near(const Way& way, double ease_asked) {
  const double share = (1 + way.girth_ease) / (1 + ease_asked);
  return at_least(kGirthToKeep, std::abs(share - 1));
}

Remedy advice_among(const std::vector<Way>& ways, double ease_asked) {
  const Way& first = ways.front();
  const bool can_stay = first.remedy == Remedy::keep && first.passes;
  if (can_stay && (ways.size() == 1 || girth_is_near(first, ease_asked))) return Remedy::keep;
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

  Adjustment adjustment;
  adjustment.gauge = gauge_on_needles(planned.gauge, request.toe);
  adjustment.planned = planned;

  PlanRequest known = request.plan;
  known.known_gauge = adjustment.gauge.gauge;
  // A count of her own says what ease she wants.
  if (request.plan.stitch_count) known.girth_ease = planned.girth_ease;
  known.stitch_count = planned.stitches.value();
  const Result<Plan> kept = make_plan(known);
  if (kept.ok()) {
    Way way = way_of(Remedy::keep, kept.value());
    go_on_from(way, kept.value(), request, request.rounds_done);
    adjustment.ways.push_back(way);
  }
  known.stitch_count.reset();
  const Result<Plan> advised = make_plan(known);
  const bool is_another = advised.ok() && advised.value().stitches != planned.stitches;
  if (is_another) {
    if (const auto way = way_by_change(request, planned, advised.value())) {
      adjustment.ways.push_back(*way);
    }
    Way anew = way_of(Remedy::restart, advised.value());
    go_on_from(anew, advised.value(), request, 0);
    adjustment.ways.push_back(anew);
  }
  if (adjustment.ways.empty()) return kept.problems();
  adjustment.advised = advice_among(adjustment.ways, known.girth_ease);
  return adjustment;
}

}  // namespace twinround

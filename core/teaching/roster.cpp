#include "roster.h"

#include <tuple>
#include <utility>

#include "rounding.h"
#include "yarn_category.h"

namespace twinround {
namespace {

void add_to(WoolTotal& wool, const PairLine& line) {
  ++wool.pairs;
  wool.length = wool.length + line.with_margin;
  wool.mass = wool.mass + line.with_margin_mass;
  if (line.balls) {
    wool.balls += line.balls->count;
  } else {
    ++wool.pairs_without_ball;
  }
}

int hundredths(Length length) {
  return round_half_up(length.mm() * 100);
}

// What tells one needle to lend from another. No cable sorts last: it is none that is sold.
std::tuple<int, bool, double> shelf_of(const NeedleName& needle, std::optional<Length> cable) {
  return {hundredths(needle.diameter), !cable, cable.value_or(Length()).mm()};
}

// Kept in order as it grows, so that nothing is left to sort.
NeedleTotal& needle_of(std::vector<NeedleTotal>& needles, const PairLine& line) {
  const auto shelf = shelf_of(line.needle, line.cable);
  auto at = needles.begin();
  while (at != needles.end() && shelf_of(at->needle, at->cable) < shelf) ++at;
  const bool is_new = at == needles.end() || shelf < shelf_of(at->needle, at->cable);
  return is_new ? *needles.insert(at, {line.needle, line.cable, 0}) : *at;
}

}  // namespace

Result<Seat> plan_seat(const PlanRequest& request, const InHand& in_hand) {
  const Result<Plan> plan = make_plan(request);
  if (!plan.ok()) return plan.problems();
  Seat seat;
  seat.line = line_of(plan.value(), request.yarn);
  for (Oddity& odd : oddities(request, plan.value(), in_hand)) {
    if (odd.harm != Harm::doubt) seat.odd.push_back(std::move(odd));
  }
  return seat;
}

RosterTotals totals_of(const std::vector<PairLine>& lines) {
  RosterTotals totals;
  totals.planned = static_cast<int>(lines.size());
  for (const YarnCategory& category : yarn_categories()) {
    WoolTotal wool{category.number};
    for (const PairLine& line : lines) {
      if (line.category == category.number) add_to(wool, line);
    }
    if (wool.pairs > 0) totals.wool.push_back(wool);
  }
  for (const PairLine& line : lines) ++needle_of(totals.needles, line).count;
  return totals;
}

}  // namespace twinround

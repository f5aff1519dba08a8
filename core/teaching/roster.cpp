#include "roster.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "rounding.h"

namespace twinround {
namespace {

WoolTotal& wool_of(std::vector<WoolTotal>& wool, int category) {
  for (WoolTotal& total : wool) {
    if (total.category == category) return total;
  }
  wool.push_back({category});
  return wool.back();
}

int hundredths(Length length) {
  return round_half_up(length.mm() * 100);
}

// What tells one needle to lend from another. No cable sorts last: it is none that is sold.
std::tuple<int, bool, double> shelf_of(const NeedleName& needle, std::optional<Length> cable) {
  return {hundredths(needle.diameter), !cable, cable.value_or(Length()).mm()};
}

NeedleTotal& needle_of(std::vector<NeedleTotal>& needles, const PairLine& line) {
  for (NeedleTotal& total : needles) {
    if (shelf_of(total.needle, total.cable) == shelf_of(line.needle, line.cable)) return total;
  }
  needles.push_back({line.needle, line.cable, 0});
  return needles.back();
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
  for (const PairLine& line : lines) {
    WoolTotal& wool = wool_of(totals.wool, line.category);
    ++wool.pairs;
    wool.length = wool.length + line.with_margin;
    wool.mass = wool.mass + line.with_margin_mass;
    if (line.balls) {
      wool.balls += line.balls->count;
    } else {
      ++wool.pairs_without_ball;
    }
    ++needle_of(totals.needles, line).count;
  }
  std::sort(totals.wool.begin(), totals.wool.end(),
            [](const WoolTotal& a, const WoolTotal& b) { return a.category < b.category; });
  std::sort(totals.needles.begin(), totals.needles.end(),
            [](const NeedleTotal& a, const NeedleTotal& b) {
              return shelf_of(a.needle, a.cable) < shelf_of(b.needle, b.cable);
            });
  return totals;
}

}  // namespace twinround

#include "cover_bound.h"

#include <algorithm>

#include "rounding.h"
#include "size_choice.h"

namespace twinround {

bool Aim::is_met_by(double bound) const {
  const bool may_be_enough = at_least(bound, wanted) && !at_least(best, wanted);
  return clearly_above(bound, best + (may_be_enough ? 0 : kSlack));
}

Bound bound_of(const CoverValues& values, int k, const Branch& branch) {
  Bound bound;
  bound.worth = values.above(branch.prices);
  bound.value = values.sum(branch.prices);
  const auto worth = [&bound](int i) { return bound.worth[static_cast<std::size_t>(i)]; };
  for (int i = 0; i < values.candidates(); ++i) {
    if (branch.states[static_cast<std::size_t>(i)] == Settled::in) bound.chosen.push_back(i);
  }
  // Behind those the open ones by worth, of equal ones the first; few enough to be put in one by
  // one.
  const auto first = static_cast<std::ptrdiff_t>(bound.chosen.size());
  for (int i = 0; i < values.candidates(); ++i) {
    if (branch.states[static_cast<std::size_t>(i)] != Settled::open) continue;
    const bool is_full = static_cast<int>(bound.chosen.size()) == k;
    if (is_full && (first == k || worth(i) <= worth(bound.chosen.back()))) continue;
    if (is_full) bound.chosen.pop_back();
    auto place = bound.chosen.end();
    while (place - bound.chosen.begin() > first && worth(i) > worth(*(place - 1))) --place;
    bound.chosen.insert(place, i);
  }
  for (const int i : bound.chosen) bound.value += bound.worth[static_cast<std::size_t>(i)];
  return bound;
}

bool step_prices(const CoverValues& values, Branch& branch, const Bound& bound, double aim,
                 double pace) {
  std::vector<double>& prices = branch.prices;
  std::vector<double> off(values.cells(),
                          1.0);  // how often a cell is left out, or served too often
  for (const int candidate : bound.chosen) {
    values.each_cell(candidate, [&](std::size_t cell, double share) {
      if (share > prices[cell]) off[cell] -= 1;
    });
  }
  double length = 0;
  for (std::size_t cell = 0; cell < off.size(); ++cell) {
    const bool is_free = prices[cell] <= 0 && off[cell] > 0;
    if (!is_free) length += values.weight(cell) * off[cell] * off[cell];
  }
  if (length <= 0) return false;
  const double step = pace * std::max(bound.value - aim, 0.0) / length;
  for (std::size_t cell = 0; cell < off.size(); ++cell) {
    prices[cell] = std::clamp(prices[cell] - step * off[cell], 0.0, 1.0);
  }
  return true;
}

void settle(Branch& branch, const Bound& bound, const Aim& aim) {
  constexpr double kNobody = 1e9;
  std::vector<char> is_chosen(branch.states.size());
  for (const int i : bound.chosen) is_chosen[static_cast<std::size_t>(i)] = 1;
  double least_chosen = kNobody;  // worth; of those still open
  double most_left = 0;
  for (std::size_t i = 0; i < is_chosen.size(); ++i) {
    if (branch.states[i] != Settled::open) continue;
    if (is_chosen[i]) least_chosen = std::min(least_chosen, bound.worth[i]);
    if (!is_chosen[i]) most_left = std::max(most_left, bound.worth[i]);
  }
  for (std::size_t i = 0; i < is_chosen.size(); ++i) {
    if (branch.states[i] != Settled::open) continue;
    const double without = bound.value - bound.worth[i] + most_left;
    const double with = bound.value - least_chosen + bound.worth[i];
    if (!aim.is_met_by(is_chosen[i] ? without : with)) {
      branch.states[i] = is_chosen[i] ? Settled::in : Settled::out;
    }
  }
}

}  // namespace twinround

#include "size_choice.h"

#include <algorithm>
#include <cmath>

#include "cover_values.h"
#include "rounding.h"

namespace twinround {

namespace {

using Sizes = std::vector<int>;
using PerCell = std::vector<double>;
enum class State : char { open, in, out };

constexpr int kRootSteps = 100;  // subgradient steps from each first price, and at every later node
constexpr int kNodeSteps = 25;
constexpr double kFirstPrices[] = {0.8, 1.0};  // of what the first choice serves
constexpr double kMostWork = 5e7;              // numbers looked at

class Search {
 public:
  Search(const CoverTable& table, const CoverValues& values, int k, double wanted)
      : table_(table), values_(values), k_(k), wanted_(wanted), all_(share_of_all(table)) {}

  SizeChoice run(const Sizes& begin);

 private:
  double value_of(const Sizes& sizes) const;
  PerCell level_of(const Sizes& sizes, int but = -1) const;
  void grow(Sizes& sizes) const;
  void swap_to_better(Sizes& sizes) const;
  void offer(const Sizes& sizes, bool polish);

  // A node of the tree: what is settled, and the prices its bound starts from.
  struct Node {
    std::vector<State> states;
    PerCell prices;
    double bound = 1;
  };
  struct Bound {
    double value = 0;
    std::vector<double> worth;  // of each candidate at the prices
    Sizes chosen;
  };
  Bound bound_at(const Node& node) const;
  double step_prices(Node& node, const Bound& bound, double pace) const;
  bool settle(Node& node, const Bound& bound) const;
  bool is_worth_it(double bound) const;
  void better_bound(Node& node, int steps);
  int branch_on(Node& node);

  const CoverTable& table_;
  const CoverValues& values_;
  int k_;
  double wanted_;
  Sizes best_;
  double best_value_ = 0;
  double all_;
  mutable double work_ = 0;
};

PerCell Search::level_of(const Sizes& sizes, int but) const {
  PerCell level(values_.cells());
  for (const int candidate : sizes) {
    if (candidate != but) values_.raise(level, candidate);
  }
  return level;
}

double Search::value_of(const Sizes& sizes) const {
  return values_.sum(level_of(sizes));
}

int best_of(const std::vector<double>& worth) {
  return static_cast<int>(std::max_element(worth.begin(), worth.end()) - worth.begin());
}

// Adds what gains most, one by one.
void Search::grow(Sizes& sizes) const {
  while (static_cast<int>(sizes.size()) < k_) {
    sizes.push_back(best_of(values_.above(level_of(sizes))));
  }
}

void Search::swap_to_better(Sizes& sizes) const {
  bool changed = true;
  while (changed) {
    changed = false;
    for (int& size : sizes) {
      const std::vector<double> worth = values_.above(level_of(sizes, size));
      const int other = best_of(worth);
      if (!clearly_above(worth[static_cast<std::size_t>(other)],
                         worth[static_cast<std::size_t>(size)])) {
        continue;
      }
      size = other;
      changed = true;
    }
  }
}

void Search::offer(const Sizes& sizes, bool polish) {
  Sizes offered = sizes;
  if (polish) swap_to_better(offered);
  const double value = value_of(offered);
  if (!best_.empty() && !clearly_above(value, best_value_)) return;
  best_ = offered;
  best_value_ = value;
}

bool Search::is_worth_it(double bound) const {
  const bool may_be_enough = at_least(bound, wanted_) && !at_least(best_value_, wanted_);
  return clearly_above(bound, best_value_ + (may_be_enough ? 0 : kSlack));
}

// Sum of the prices, and of the k candidates worth most at them, those settled as `in` among them.
Search::Bound Search::bound_at(const Node& node) const {
  Bound bound;
  work_ +=
      values_.size() + 10.0 * values_.candidates() + 5.0 * static_cast<double>(values_.cells());
  bound.worth = values_.above(node.prices);
  bound.value = values_.sum(node.prices);
  Sizes open;
  for (int i = 0; i < values_.candidates(); ++i) {
    const State state = node.states[static_cast<std::size_t>(i)];
    if (state == State::in) bound.chosen.push_back(i);
    if (state == State::open) open.push_back(i);
  }
  const auto needed = std::min(open.size(), static_cast<std::size_t>(k_) - bound.chosen.size());
  const auto by_worth = [&bound](int a, int b) {
    const double first = bound.worth[static_cast<std::size_t>(a)];
    const double second = bound.worth[static_cast<std::size_t>(b)];
    return first > second || (first == second && a < b);
  };
  std::partial_sort(open.begin(), open.begin() + static_cast<std::ptrdiff_t>(needed), open.end(),
                    by_worth);
  bound.chosen.insert(bound.chosen.end(), open.begin(),
                      open.begin() + static_cast<std::ptrdiff_t>(needed));
  for (const int i : bound.chosen) bound.value += bound.worth[static_cast<std::size_t>(i)];
  return bound;
}

// Cells that the chosen serve more than once become dearer, those they do not serve cheaper.
// Returns how far off they were.
double Search::step_prices(Node& node, const Bound& bound, double pace) const {
  PerCell off(values_.cells(), 1.0);
  for (const int candidate : bound.chosen) {
    values_.each_cell(candidate, [&](std::size_t cell, double share) {
      if (share > node.prices[cell]) off[cell] -= 1;
    });
  }
  double length = 0;
  for (std::size_t cell = 0; cell < off.size(); ++cell) {
    const bool at_end = node.prices[cell] <= 0 && off[cell] > 0;
    if (!at_end) length += values_.weight(cell) * off[cell] * off[cell];
  }
  if (length <= 0) return 0;
  const double step = pace * std::max(bound.value - best_value_, 0.0) / length;
  for (std::size_t cell = 0; cell < off.size(); ++cell) {
    node.prices[cell] = std::clamp(node.prices[cell] - step * off[cell], 0.0, 1.0);
  }
  return length;
}

// Settles every open candidate without which, or with which, the bound would not be worth it.
bool Search::settle(Node& node, const Bound& bound) const {
  std::vector<bool> is_chosen(node.states.size());
  double least_in = 1e9;
  double most_out = 0;
  for (const int i : bound.chosen) is_chosen[static_cast<std::size_t>(i)] = true;
  for (std::size_t i = 0; i < node.states.size(); ++i) {
    if (node.states[i] != State::open) continue;
    if (is_chosen[i]) least_in = std::min(least_in, bound.worth[i]);
    if (!is_chosen[i]) most_out = std::max(most_out, bound.worth[i]);
  }
  bool any_open = false;
  for (std::size_t i = 0; i < node.states.size(); ++i) {
    if (node.states[i] != State::open) continue;
    if (is_chosen[i] && !is_worth_it(bound.value - bound.worth[i] + most_out)) {
      node.states[i] = State::in;
    } else if (!is_chosen[i] && !is_worth_it(bound.value - least_in + bound.worth[i])) {
      node.states[i] = State::out;
    } else {
      any_open = true;
    }
  }
  return any_open;
}

void Search::better_bound(Node& node, int steps) {
  PerCell best_prices = node.prices;
  double pace = 1.0;
  int since = 0;
  for (int step = 0; step < steps; ++step) {
    const Bound bound = bound_at(node);
    if (bound.value < node.bound) {
      since = 0;
      node.bound = bound.value;
      best_prices = node.prices;
    } else if (++since == 5) {
      since = 0;
      pace *= 0.6;
    }
    if (!is_worth_it(node.bound)) break;
    if (step % 8 == 0) offer(bound.chosen, false);
    settle(node, bound);
    if (step_prices(node, bound, pace) == 0) break;
  }
  node.prices = best_prices;
}

// The open candidate that the bound leans on most; -1 where all is settled.
int Search::branch_on(Node& node) {
  const Bound bound = bound_at(node);
  int most = -1;
  for (const int i : bound.chosen) {
    const auto at = static_cast<std::size_t>(i);
    if (node.states[at] != State::open) continue;
    if (most < 0 || bound.worth[at] > bound.worth[static_cast<std::size_t>(most)]) most = i;
  }
  if (most < 0) {
    offer(bound.chosen, false);
    node.bound = std::min(node.bound, value_of(bound.chosen));
  }
  return most;
}

SizeChoice Search::run(const Sizes& begin) {
  Sizes first = begin;
  grow(first);
  offer(first, true);

  std::vector<Node> open(1);
  open[0].states.assign(static_cast<std::size_t>(values_.candidates()), State::open);
  for (int i = 0; i < values_.candidates(); ++i) {
    if (table_.is_barred(i)) open[0].states[static_cast<std::size_t>(i)] = State::out;
  }
  open[0].bound = all_;
  const PerCell level = level_of(best_);
  for (const double price : kFirstPrices) {
    Node root = open[0];
    root.prices = level;
    for (double& of_cell : root.prices) of_cell *= price;
    if (is_worth_it(root.bound)) better_bound(root, kRootSteps);
    if (root.bound < open[0].bound || open[0].prices.empty()) open[0] = std::move(root);
  }
  double ruled_out = best_value_;  // the best bound of all that was put aside
  while (!open.empty() && work_ < kMostWork) {
    const auto most = std::max_element(
        open.begin(), open.end(), [](const Node& a, const Node& b) { return a.bound < b.bound; });
    Node node = std::move(*most);
    *most = std::move(open.back());
    open.pop_back();
    if (is_worth_it(node.bound)) better_bound(node, kNodeSteps);
    const int at = is_worth_it(node.bound) ? branch_on(node) : -1;
    if (at < 0) {
      ruled_out = std::max(ruled_out, node.bound);
      continue;
    }
    open.push_back(node);
    open.back().states[static_cast<std::size_t>(at)] = State::out;
    open.push_back(std::move(node));
    open.back().states[static_cast<std::size_t>(at)] = State::in;
  }
  for (const Node& node : open) ruled_out = std::max(ruled_out, node.bound);
  std::sort(best_.begin(), best_.end());
  return {best_, best_value_, std::max(best_value_, ruled_out)};
}

}  // namespace

double share_of(const CoverTable& table, const std::vector<int>& candidates) {
  const CoverValues values(table);
  PerCell level(values.cells());
  for (const int candidate : candidates) values.raise(level, candidate);
  return values.sum(level);
}

double share_of_all(const CoverTable& table) {
  const CoverValues values(table);
  PerCell level(values.cells());
  for (int i = 0; i < values.candidates(); ++i) {
    if (!table.is_barred(i)) values.raise(level, i);
  }
  return values.sum(level);
}

SizeChoice best_sizes(const CoverTable& table, int k, double wanted, const SizeChoice& fewer) {
  const CoverValues values(table);
  return Search(table, values, k, wanted).run(fewer.candidates);
}

}  // namespace twinround

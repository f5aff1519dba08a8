#include "size_choice.h"

#include <algorithm>

#include "cover_bound.h"
#include "cover_values.h"
#include "rounding.h"

namespace twinround {

namespace {

using Sizes = std::vector<int>;
using PerCell = std::vector<double>;

// What keeps an answer under a tenth of a second on a desk: a search gives up after so many numbers
// looked at.
constexpr double kMostWork = 5e7;
constexpr int kFirstSteps = 100;               // to better the prices from each first guess
constexpr int kLaterSteps = 25;                // and in every branch
constexpr double kFirstPrices[] = {0.8, 1.0};  // of what the first choice serves

class Search {
 public:
  Search(const CoverTable& table, int k, double wanted)
      : table_(table), values_(table), k_(k), all_(share_of_all(table)) {
    aim_.wanted = wanted;
  }

  SizeChoice run(const Sizes& begin);

 private:
  PerCell level_of(const Sizes& sizes, int but = -1) const;
  void grow(Sizes& sizes) const;
  void swap_to_better(Sizes& sizes) const;
  void offer(const Sizes& sizes);
  Bound bound_at(const Branch& branch);
  void better_bound(Branch& branch, int steps);
  Branch first_branch();
  int branch_on(Branch& branch);

  const CoverTable& table_;
  CoverValues values_;
  int k_;
  double all_;
  Sizes best_;
  Aim aim_;  // its best is what best_ serves
  double work_ = 0;
};

int best_of(const std::vector<double>& worth) {
  return static_cast<int>(std::max_element(worth.begin(), worth.end()) - worth.begin());
}

PerCell Search::level_of(const Sizes& sizes, int but) const {
  PerCell level(values_.cells());
  for (const int candidate : sizes) {
    if (candidate != but) values_.raise(level, candidate);
  }
  return level;
}

// Adds what gains most, one by one.
void Search::grow(Sizes& sizes) const {
  while (static_cast<int>(sizes.size()) < k_) {
    std::vector<double> worth = values_.above(level_of(sizes));
    for (const int size : sizes) worth[static_cast<std::size_t>(size)] = -1;  // once is enough
    sizes.push_back(best_of(worth));
  }
}

void Search::swap_to_better(Sizes& sizes) const {
  bool changed = true;
  while (changed) {
    changed = false;
    for (int& size : sizes) {
      const std::vector<double> worth = values_.above(level_of(sizes, size));
      const int other = best_of(worth);
      if (clearly_above(worth[static_cast<std::size_t>(other)],
                        worth[static_cast<std::size_t>(size)])) {
        size = other;
        changed = true;
      }
    }
  }
}

void Search::offer(const Sizes& sizes) {
  const double share = values_.sum(level_of(sizes));
  if (!best_.empty() && !clearly_above(share, aim_.best)) return;
  best_ = sizes;
  aim_.best = share;
}

Bound Search::bound_at(const Branch& branch) {
  // Cells and candidates are gone through several times besides.
  work_ +=
      values_.size() + 10.0 * values_.candidates() + 5.0 * static_cast<double>(values_.cells());
  return bound_of(values_, k_, branch);
}

void Search::better_bound(Branch& branch, int steps) {
  constexpr int kPatience = 5;
  PerCell best_prices = branch.prices;
  double pace = 1.0;
  int since = 0;
  for (int step = 0; step < steps && aim_.is_met_by(branch.bound); ++step) {
    const Bound bound = bound_at(branch);
    if (bound.value < branch.bound) {
      since = 0;
      branch.bound = bound.value;
      best_prices = branch.prices;
    } else if (++since == kPatience) {
      since = 0;
      pace *= 0.6;
    }
    if (step % 8 == 0) offer(bound.chosen);
    settle(branch, bound, aim_);
    if (!step_prices(values_, branch, bound, aim_.best, pace)) break;
  }
  branch.prices = best_prices;
}

// Everything open, with the better of the first prices.
Branch Search::first_branch() {
  Branch whole;
  whole.bound = all_;
  for (int i = 0; i < values_.candidates(); ++i) {
    whole.states.push_back(table_.is_barred(i) ? Settled::out : Settled::open);
  }
  const PerCell level = level_of(best_);
  Branch first;
  for (const double price : kFirstPrices) {
    Branch branch = whole;
    for (const double share : level) branch.prices.push_back(price * share);
    better_bound(branch, kFirstSteps);
    if (first.prices.empty() || branch.bound < first.bound) first = std::move(branch);
  }
  return first;
}

// The open candidate that the bound leans on most; -1 where all is settled, and so known.
int Search::branch_on(Branch& branch) {
  const Bound bound = bound_at(branch);
  int most = -1;
  double most_worth = -1;
  for (const int i : bound.chosen) {
    const auto at = static_cast<std::size_t>(i);
    if (branch.states[at] != Settled::open || bound.worth[at] <= most_worth) continue;
    most = i;
    most_worth = bound.worth[at];
  }
  if (most < 0) {
    offer(bound.chosen);
    branch.bound = std::min(branch.bound, values_.sum(level_of(bound.chosen)));
  }
  return most;
}

SizeChoice Search::run(const Sizes& begin) {
  Sizes first = begin;
  grow(first);
  swap_to_better(first);
  offer(first);

  std::vector<Branch> open = {first_branch()};
  double put_aside = 0;  // the best bound of all that was
  const auto by_bound = [](const Branch& a, const Branch& b) { return a.bound < b.bound; };
  while (!open.empty() && work_ < kMostWork) {
    const auto most = std::max_element(open.begin(), open.end(), by_bound);
    std::swap(*most, open.back());
    Branch branch = std::move(open.back());
    open.pop_back();
    better_bound(branch, kLaterSteps);
    const int at = aim_.is_met_by(branch.bound) ? branch_on(branch) : -1;
    if (at < 0) {
      put_aside = std::max(put_aside, branch.bound);
      continue;
    }
    open.push_back(branch);
    open.back().states[static_cast<std::size_t>(at)] = Settled::out;
    open.push_back(std::move(branch));
    open.back().states[static_cast<std::size_t>(at)] = Settled::in;
  }
  for (const Branch& branch : open) put_aside = std::max(put_aside, branch.bound);
  for (std::size_t i = 1; i < best_.size();
       ++i) {  // a ready-made sort would be longer than the list
    for (std::size_t at = i; at > 0 && best_[at] < best_[at - 1]; --at) {
      std::swap(best_[at], best_[at - 1]);
    }
  }
  return {best_, aim_.best, std::max(aim_.best, put_aside)};
}

}  // namespace

double share_of(const CoverTable& table, const std::vector<int>& candidates) {
  const CoverValues values(table);
  PerCell level(values.cells());
  for (const int candidate : candidates) values.raise(level, candidate);
  return values.sum(level);
}

double share_of_all(const CoverTable& table) {
  std::vector<int> all;
  for (int i = 0; i < table.size(); ++i) {
    if (!table.is_barred(i)) all.push_back(i);
  }
  return share_of(table, all);
}

SizeChoice best_sizes(const CoverTable& table, int k, double wanted,
                      const std::vector<int>& begin) {
  return Search(table, k, wanted).run(begin);
}

}  // namespace twinround

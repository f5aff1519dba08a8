// How much k sizes can serve at the most: every foot has a price, and is served once for it. The
// sum of all prices and of what the k candidates worth most serve above them is never less than
// what any k candidates serve.
#pragma once

#include <vector>

#include "cover_values.h"

namespace twinround {

enum class Settled : char { open, in, out };

// A part of all choices: those with every candidate that is `in`, and none that is `out`.
struct Branch {
  std::vector<Settled> states;  // of each candidate
  std::vector<double> prices;   // of each cell, as a share of its feet
  double bound = 1;             // the least found: no choice of this part serves more
};

// What is sought: more than `best` by kSlack; or just enough of it, where only `wanted` is missing.
struct Aim {
  double best = 0;
  double wanted = 1;

  bool is_met_by(double bound) const;
};

struct Bound {
  double value = 0;
  std::vector<double> worth;  // of each candidate above the prices
  std::vector<int> chosen;    // the k worth most, those that are `in` first
};
Bound bound_of(const CoverValues& values, int k, const Branch& branch);

// A subgradient step by Polyak's rule, `pace` of it: cells that the chosen serve more than once
// become dearer, those that they leave out cheaper. False where there is nothing to better.
bool step_prices(const CoverValues& values, Branch& branch, const Bound& bound, double aim,
                 double pace);

// Settles every open candidate without which, or with which, the bound would not meet the aim.
void settle(Branch& branch, const Bound& bound, const Aim& aim);

}  // namespace twinround

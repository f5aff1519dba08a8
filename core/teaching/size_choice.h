// Which sizes serve the most feet together.
#pragma once

#include <vector>

#include "cover_table.h"

namespace twinround {

// A gain smaller than this is none: one foot in two thousand, as much as the table itself may be
// off.
inline constexpr double kSlack = 5e-4;
inline constexpr int kMostSizes = 12;

struct SizeChoice {
  std::vector<int> candidates;  // ascending
  double share = 0;             // of all feet that they serve together, each counted once
  double at_most = 0;           // no choice of so many candidates serves more: proven
};

// What a set of candidates serves together, each foot counted once: of every cell the largest share
// that any of them serves.
double share_of(const CoverTable& table, const std::vector<int>& candidates);

// All that the candidates could serve, were they all made.
double share_of_all(const CoverTable& table);

// The `k` candidates that serve most. Exact: no other k of the table's candidates serve more by
// kSlack; where `wanted` lies between what was found and what could not be ruled out, by nothing.
// By branch and bound: the bound is the Lagrangian one in which each foot may be served once for a
// price, the prices bettered by subgradients, candidates settled by what they would cost the bound.
// It gives up after a set number of bounds; `at_most` then says how far it came (share + kSlack or
// less where it did not). The table's own error comes on top. `fewer`: a choice for fewer sizes to
// begin from, or none.
SizeChoice best_sizes(const CoverTable& table, int k, double wanted, const SizeChoice& fewer);

}  // namespace twinround

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

// The `k` candidates that serve most, from `begin` (fewer or as many, or none). Exact to kSlack: no
// other k of the table's candidates serve more by that; a `wanted` share that some k of them reach
// is reached. By branch and bound (cover_bound). It gives up after a set amount of work, and
// `at_most` then says how far it came: measured, up to six sizes for women, men and children
// together are settled as a rule, and of twelve 0.8 percentage points are left open at the most.
// The table's own error comes on top. Precondition: k at most the candidates that are not barred.
SizeChoice best_sizes(const CoverTable& table, int k, double wanted, const std::vector<int>& begin);

}  // namespace twinround

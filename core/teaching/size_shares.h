// Of chosen sizes, which feet each of them is for.
#pragma once

#include <array>
#include <vector>

#include "cover_table.h"

namespace twinround {

struct SizeShare {
  double serves = 0;   // share of all feet that it serves, whatever the other sizes serve
  double counted = 0;  // share of all feet counted for it: each foot for one size
  std::array<double, 3> by_body{};  // of `counted`, in the order of Body
  LengthBand lengths;               // of the feet counted, the 5th to the 95th percentile
};

// A foot that several sizes serve is counted for the one it fits best: ball girth over tube nearest
// to 1/0.9 (10 % of ease, trade rule) and length nearest to the sock's, both as ratios and weighing
// alike (ASSUMPTION); those whose heel that one does not pass, for the next. `counted` adds up to
// what the sizes serve together.
std::vector<SizeShare> size_shares(const CoverTable& table, const SockMake& make,
                                   const std::vector<int>& candidates);

}  // namespace twinround

// A run of sizes as one knows them, each at least as wide and as long as the one before.
#pragma once

#include <vector>

#include "cover_table.h"

namespace twinround {

// Of 1, 2, ... `most` sizes the run that serves the largest share, as candidates ascending (the
// entry of k is at k - 1; empty where there is no run of so many). Exact among ordered runs, by
// dynamic programming: what two sizes of a run both serve, every size between them serves too, so
// that a run's share is the sum of its sizes' less what neighbours share.
std::vector<std::vector<int>> ordered_sizes(const CoverTable& table, int most);

}  // namespace twinround

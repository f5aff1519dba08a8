// What wool at hand makes of the pairs wanted.
#pragma once

#include <vector>

#include "units.h"

namespace twinround {

// Pairs wanted of one size, and the yarn of a pair.
struct PairsWanted {
  int pairs = 0;
  Length yarn;
};

struct LotShare {
  std::vector<int> alone;  // of each size: how many pairs the lot makes if it makes no other
  std::vector<int> pairs;  // of each size: how many it is to make
  Length left;
};

struct LotsMake {
  std::vector<LotShare> lots;
  std::vector<int> pairs;  // of each size, all lots together
  int in_all = 0;
  int at_most =
      0;  // more pairs than that are ruled out; above in_all only where the search gave up
};

// As many pairs of those wanted as the lots make, each pair from one lot. Some best choice takes
// the pairs that need least yarn, for any other pair can give its place to a shorter one; so the
// largest number is sought whose shortest pairs fit into the lots, from the most that the metres
// allow downwards: exact by trying every way of filling them, the longest pairs first. It gives up
// a number after a set count of ways (of dozens of pairs in many small lots). Then pairs give way
// to longer ones where their lot has the room. Preconditions: every yarn is longer than nothing.
LotsMake pairs_from(const std::vector<Length>& lots, const std::vector<PairsWanted>& wanted);

}  // namespace twinround

// A population of feet cut into cells, and what share of each cell every candidate size serves.
#pragma once

#include <vector>

#include "foot_population.h"
#include "size_rule.h"

namespace twinround {

// Feet alike enough to be counted together.
struct FootCell {
  double weight = 0;  // share of all feet
  Length length;      // of its middle
  Length ball;
  Body body = Body::woman;
};

// A sock's reach in length: the strips [first, end).
struct Reach {
  int first = 0;
  int end = 0;
};

// A candidate is a count and a foot length, numbered count by count: `count x feet.size() + foot`.
// It serves `served[count][cell]` of a cell in its reach, nothing elsewhere. Where several serve a
// cell, together they serve as much as the one that serves most of it: what passes the smaller tube
// passes the larger.
struct CoverTable {
  std::vector<FootCell> cells;      // strip by strip
  std::vector<int> strips;          // the first cell of each, and the end of the last
  std::vector<Length> strip_edges;  // foot lengths; one more than there are strips
  std::vector<Stitches> counts;     // ascending
  std::vector<Length> feet;         // ascending
  std::vector<Reach> reaches;       // of each of `feet`
  std::vector<std::vector<double>> served;
  std::vector<char> barred;  // candidates that cannot be knit; empty: none

  int size() const { return static_cast<int>(counts.size() * feet.size()); }
  bool is_barred(int candidate) const {
    return !barred.empty() && barred[static_cast<std::size_t>(candidate)] != 0;
  }
  std::size_t count_of(int candidate) const {
    return static_cast<std::size_t>(candidate) / feet.size();
  }
  std::size_t foot_of(int candidate) const {
    return static_cast<std::size_t>(candidate) % feet.size();
  }
};

// Candidates: foot lengths in steps of 5 mm, as shoes are (ISO 9407), and every count of the rib,
// or so many of them that the tubes differ by 5 mm at least (ASSUMPTION: below that two sizes are
// one). Cells end where the reach of a candidate ends, in length and in ball girth, so that no edge
// of the rule cuts a cell; of the heel the share that passes is taken at the cell's middle. Cut off
// at 4.5 standard deviations. Measured against random feet and a finer integration: the share of
// any choice is within 0.05 percentage points. Fails never; no count or foot in reach gives an
// empty table.
CoverTable cover_table(const std::vector<BodyFeet>& feet, const SockMake& make, int repeat);

}  // namespace twinround

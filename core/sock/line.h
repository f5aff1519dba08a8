// What the needles do in one round, as runs: vocabulary shared by the files of this folder.
#pragma once

#include <vector>

#include "units.h"

namespace twinround {

enum class Work { knit, purl, make_one_left, make_one_right, make_one_purl };

struct Run {
  Work work = Work::knit;
  int times = 1;
  friend bool operator==(const Run&, const Run&) = default;
};

// One half (one side of the needle) in knitting order; neighbours always differ in `work`.
using HalfLine = std::vector<Run>;

// One round of one sock.
struct RoundLine {
  HalfLine first;
  HalfLine second;
  friend bool operator==(const RoundLine&, const RoundLine&) = default;
};

// Adds to the end of a half, joining a run of the same work.
void append_run(HalfLine& half, Work work, int times);

// The same half read from its other end; an increase leans the other way.
HalfLine read_backwards(const HalfLine& half);

// Stitches on the needle after the half: an increase makes one from none.
Stitches stitches_after(const HalfLine& half);

// Runs said `times` times over: {{p1}, 1}, {{k2, p2}, 4}, {{k2, p1}, 1} is "p1, *k2, p2* 4 times,
// k2, p1".
struct Phrase {
  std::vector<Run> runs;
  int times = 1;
};

// A half as people say it: its longest stretch of a repeated pair of runs folded, the rest as it
// stands. Unfolding gives the runs back exactly.
std::vector<Phrase> fold_repeats(const HalfLine& half);

}  // namespace twinround

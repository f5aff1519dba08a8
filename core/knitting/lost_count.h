// Back to the round from what is seen in the fabric, and what to do where the rib or the two socks
// have parted from the plan.
#pragma once

#include <optional>
#include <vector>

#include "rib.h"
#include "units.h"

namespace twinround {

// What a spiral rib shows of the rounds knit in it: whole columns it has moved since the toe, and
// rounds knit since it last moved (its first round after the move is 1).
struct SeenRib {
  int columns = 0;
  int since = 1;
};

// What stands there after `rounds` rounds of a rib that moves. Precondition: rounds >= 1 and
// rib.rounds_per_shift >= 1.
SeenRib seen_after(const Rib& rib, int rounds);

// Rounds of the rib that are knit: rounds_per_shift x columns + since. Nothing for a straight rib,
// which shows none, or where more rounds were counted since the move than there are between two.
std::optional<int> rounds_seen(const Rib& rib, SeenRib seen);

// Where the columns were not counted, only which stitch of the repeat a round begins with (0: the
// first knit stitch): every number of rounds, from 1 to `most`, after which it looks like that.
// They lie a period apart. `place`: 0 to repeat - 1.
std::vector<int> rounds_of_phase(const Rib& rib, int place, int since, int most);

// Of the socks A and B, counted each by itself: how many rounds A has more (B where negative).
// Those are to be knit on the other sock alone, and on it both halves.
int rounds_apart(int rounds_of_a, int rounds_of_b);

// A rib that has moved at the wrong round, or not at the right one.
struct Misstep {
  int rounds_since = 0;  // knit since the round that was wrong, that one included
  int repeat = 4;
  Stitches stitches;  // in a round of one sock
};
// Two ways out. Unpicked are the rounds of both socks. Cured in place, one column at either edge of
// each knit rib is dropped down to the wrong round and hooked up again the other way.
struct WaysOut {
  int rounds_to_unpick = 0;
  int stitches_to_unpick = 0;  // of the pair
  int columns_to_hook = 0;     // of the pair
  int stitches_to_hook = 0;    // of the pair: columns x rounds
};
WaysOut ways_out(const Misstep& misstep);

}  // namespace twinround

// The round of one sock found again from what is seen on it, and what cannot be seen on any.
#pragma once

#include <optional>
#include <vector>

#include "rib.h"
#include "units.h"

namespace twinround {

// What of a pair's plan it takes. A mirrored pair's second sock is read the other way.
struct PairShape {
  Rib rib;
  Stitches stitches;  // in a round of one sock, even
  int toe_rounds = 0;
  int rib_rounds = 0;    // of the rib that moves, to the cuff
  int plain_rounds = 0;  // of those, below the first widening round; all where there is none
  int cuff_rounds = 0;   // above them, straight on from the last line of the rib
};

struct Seen {
  bool in_toe = false;
  int toe_rounds = 0;          // counted in the toe
  std::optional<int> columns;  // whole columns the rib has moved; else
  int place = 0;               // which stitch of the repeat a round begins with (0: first knit one)
  int since = 1;               // rounds since the last move, its own among them
  std::optional<int> near;     // about so many rounds in all
  bool on_second = false;      // seen on the second sock
};

enum class SeenFault {
  none,
  beyond_toe,      // more rounds than the toe has
  too_many_since,  // more rounds since the move than lie between two moves
  beyond_rib,      // more moves than the rib makes, or in a straight one more rounds than there are
  beyond_cuff,     // after the last move, more rounds than there are to the edge
  never_moves,     // a straight rib has no columns to count and no place to tell
  place_not_reached  // the rib never stands so, that many rounds after a move
};

// Rounds knit in all, cast-on apart: each number that looks like that, lowest first.
struct Found {
  SeenFault fault = SeenFault::none;
  std::vector<int> rounds;    // of columns or the toe one alone; of a place a period apart
  std::optional<int> likely;  // the one nearest to `near` (of two, the lower), or the only one
};

// The cuff moves no more: its rounds are counted on since the last move. A straight rib is told by
// rounds since it began, as `since` at 0 columns. A place is known below the first widening round
// alone: above it the repeat is another. Precondition: since >= 1, no number below 0, place <
// repeat.
Found find_round(const PairShape& pair, const Seen& seen);

// How often the rib moves on its way to the cuff; 0 for a straight one.
int moves_of(const PairShape& pair);

// Rounds that can be counted since the move that made it `columns`, up to the next one or, behind
// the last, to the edge. Precondition: columns from 0 to moves_of(pair).
int most_since(const PairShape& pair, int columns);

// Where a round of the first sock of a mirrored pair begins within the repeat while one of the
// second begins at `place`: each half of the second is the first's read backwards. And the other
// way round: it is its own inverse.
int mirrored_place(const Rib& rib, Stitches stitches, int place);

}  // namespace twinround

// The toe: from the cast-on at the tip to the sock's full count, four stitches an increase round.
#pragma once

#include <vector>

#include "line.h"
#include "units.h"

namespace twinround {

// left_right: the great-toe side widens fast, the other side slowly, and the second sock is the
// first one's mirror.
enum class ToeShape { round, even, left_right };

// Which sides of the tube an increase round widens. The great-toe side is where a round begins: the
// start of the first half and the end of the second.
enum class ToeSides { none, both, great, little };

struct ToeInput {
  Stitches stitches;
  Length foot_length;
  RoundGauge gauge;
  double share = 0.25;  // of the foot's length: a quarter (Dillmont, Encyclopedia of Needlework)
  double tip_share = 0.40;  // of the count, cast on. ASSUMPTION
  ToeShape shape = ToeShape::round;
};

struct Toe {
  Stitches cast_on;
  int wraps = 0;                // round each needle: half the cast-on; the slip knot is not counted
  std::vector<int> counts;      // stitches after toe round 1, 2, ...; ends on the sock's count
  std::vector<ToeSides> sides;  // which sides toe round 1, 2, ... widens
  int increase_rounds = 0;      // rounds that widen at all
};

// The cast-on total: nearest to tip_share x n among n, n - 4, n - 8, ..., at least 8 and at most n;
// a tie goes up.
Stitches cast_on_total(Stitches n, double tip_share);

// Round 1 is plain; never more than two increase rounds together; every step is 0 or 4 (of a left
// and right toe 0, 2 or 4). The toe is as long as `share` of the foot asks, or as the increases
// need, whichever is more. Total for any valid count; cannot fail.
Toe shape_toe(const ToeInput& input);

// A round worked on `before` stitches. Both sides: each half k1, M1R, k to the last stitch, M1L,
// k1. One side: the halves' edges on that side alone. None: plain.
RoundLine toe_round(Stitches before, ToeSides sides);

}  // namespace twinround

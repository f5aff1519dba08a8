// The toe on the needles led to another count than it was begun for.
#pragma once

#include <optional>
#include <vector>

#include "toe.h"
#include "units.h"

namespace twinround {

// A toe round that is worked otherwise than it was begun to be, or one that is added.
struct ToeStep {
  int round = 0;                     // of the sock, from 1
  ToeSides begun = ToeSides::none;   // what the toe was begun with
  ToeSides worked = ToeSides::none;  // what is worked now
  bool added = false;
  Stitches stitches;  // on the needle after it
};

struct TurnedToe {
  int from = 0;  // the last round that stays as it is knit; what is knit above it is unpicked
  Toe toe;       // as it is then worked, from the cast-on
  std::vector<ToeStep> steps;
};

// Fewer stitches: the last increases ahead are left out, those of the fuller side first, and the
// toe keeps its length. More: the last plain rounds ahead that stand between plain ones increase
// too, and where they do not suffice, rounds are added behind the toe, each after a plain one.
// Where an odd pair of stitches is left, one round widens on one side alone: both halves always get
// the same. Nothing where even the cast-on has more than `count`.
// Precondition: rounds_done >= 0; both counts even.
std::optional<TurnedToe> turn_toe(const Toe& begun, int rounds_done, Stitches count);

}  // namespace twinround

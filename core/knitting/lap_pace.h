// A knitter's pace from rounds that were timed.
#pragma once

#include <vector>

#include "units.h"

namespace twinround {

// One round of the pair by the clock: stitches of both socks, both turns within its time.
struct Lap {
  int stitches = 0;
  Duration time;
};

// A lap is knitting beyond this: the two turns of a round.
Duration turns_of_a_lap();

// Stitches a minute, the turns taken off: the median of the laps, which one telephone call does not
// move; of an even number the mean of the middle two. Precondition: not empty, and every lap longer
// than its turns.
double pace_of(const std::vector<Lap>& laps);

}  // namespace twinround

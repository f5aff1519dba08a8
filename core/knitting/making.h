// A sock in the making, as what is asked about it on the needles needs it: its rounds and its yarn.
#pragma once

#include <vector>

#include "plan.h"
#include "units.h"

namespace twinround {

struct SockInMaking {
  std::vector<RoundSpan> rounds;  // from the toe up: section, rounds, stitches and line of each
  Length loop;                    // yarn in a stitch
  Length cast_on, bind_off;       // of one sock
  Length tails;                   // both
};

}  // namespace twinround

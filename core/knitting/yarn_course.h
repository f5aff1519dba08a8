// Which metre of its yarn lies in which round of a sock, from the tail before the cast-on to the
// tail behind the bind-off.
#pragma once

#include <vector>

#include "making.h"
#include "units.h"

namespace twinround {

// `rounds[r]` is round r + 1; `used[r]` is in the sock once r rounds are knit, the tail and the
// cast-on in `used[0]`. There is at least one round.
struct YarnCourse {
  struct Round {
    Section section = Section::toe;
    int stitches = 0;
  };
  std::vector<Round> rounds;
  std::vector<Length> used;
  Length bind_off;
  Length tail;   // one
  Length whole;  // all of it
};

YarnCourse yarn_course(const SockInMaking& sock);

// A place in a sock: `share` of round `round` (from 1) is knit. The cast-on and its tail lie at the
// beginning of round 1, the bind-off and its tail at the end of the last.
struct SockPlace {
  int round = 1;
  double share = 0;
};

// Where the sock stands when `yarn` of it is worked; below 0 its beginning, past the whole its end.
// Yarn within a nanometre of a round's end is that round's end and the next one's beginning.
SockPlace place_of_yarn(const YarnCourse& course, Length yarn);

// Yarn of one colour, in one piece.
struct Band {
  int colour = 0;
  Length yarn;
  SockPlace from, to;
};

}  // namespace twinround

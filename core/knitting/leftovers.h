// Socks out of what is left of other yarn: which lot knits which rounds, from the toe up, both
// socks alike.
#pragma once

#include <vector>

#include "units.h"
#include "yarn_course.h"

namespace twinround {

inline constexpr int kMostLots = 12;

struct LeftoversInput {
  std::vector<Length> lots;  // yarn in each, halved for A and B; 1 to kMostLots
  double margin = 0.10;      // kept over what each lot's rounds take
};

// Rounds `from` to `to` of each sock out of lot `lot` (from 0).
struct LotRun {
  int lot = 0;
  int from = 1;
  int to = 1;
  Length yarn;  // of one sock, without the margin: the rounds and two tails, the cast-on and the
                // bind-off where they are in it
};

// Which parts of the sock half of a lot makes by itself, its two tails and the margin kept; the toe
// with its cast-on, the cuff with the bind-off. Of a part that the sock does not have: no.
struct LotMakes {
  bool toe = false, spiral = false, widening = false, cuff = false;
  Length half;
};

// A run cut where parts of the sock meet.
struct LotPart {
  int lot = 0;
  Section section = Section::toe;
  int from = 1;
  int to = 1;
};

struct Leftovers {
  std::vector<LotMakes> lots;  // as they were told
  std::vector<LotRun> runs;    // from the toe up, each lot once at most
  bool reaches = false;        // to the planned edge; else the runs end earlier, bound off there
  bool keeps_margin = false;   // reaches with the margin kept; else just so, laid without it
  int rounds = 0;              // of each sock; 0 where the lots do not even make one and bind off
  int joins = 0;
  int joins_inside = 0;  // of those, within the toe or the cuff
  // In a further yarn, for the pair and with the margin: what the lots do not reach with theirs
  // kept. 0 where they do.
  Length missing;
};

// As few joins as there can be; of as many, the fewest within toe or cuff; in the order in which
// the lots were told wherever that is as good. A run takes as many rounds as its lot gives or ends
// where a part does. The bind-off is of the yarn of the last round. Where the lots do not reach, as
// many rounds as they give, the margin kept; where it is the margin alone that is missing, the
// whole sock without it. Exact: every choice of lots and every order is weighed.
Leftovers lay_leftovers(const YarnCourse& course, const LeftoversInput& input);

std::vector<LotPart> parts_of(const YarnCourse& course, const std::vector<LotRun>& runs);

}  // namespace twinround

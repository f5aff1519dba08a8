// Where a pair in the making stands: yarn used, yarn and stitches still to go, and what comes next.
#pragma once

#include <vector>

#include "making.h"
#include "units.h"

namespace twinround {

// Four passes make a round of the pair: A first half, B first half, B second half, A second half.
inline constexpr int kPassesPerRound = 4;

// Whole rounds of the pair, and whole passes of the round in hand (0 to 3; 0 where all is done).
struct PairDone {
  int rounds = 0;
  int passes = 0;
};

struct YarnOfSock {
  Length used;   // cast-on and its tail among it
  Length to_go;  // bind-off and its tail among it; both together are the sock's yarn
};

// `increase`: the next toe round that grows. `rib`: the first round of the rib. `shift`: the next
// round in which the rib moves. `cuff`: its first round.
enum class Event { increase, rib, shift, widening, cuff, bind_off };

// `round` counts from 1 at the toe's first; the bind-off stands one past the last. `in` rounds of
// the pair are to be finished before it begins: 0 where it is the round in hand.
struct Coming {
  Event event = Event::bind_off;
  int round = 0;
  int in = 0;
};

struct Place {
  bool all_done = false;  // every round is knit, and the bind-off is left
  int stitches = 0;       // after the round in hand, of one sock; all done: on the needle
  YarnOfSock a, b;
  int worked = 0, to_go = 0;  // stitches of the pair, cast-on and bind-off apart
  int rounds_to_go = 0;       // the round in hand among them
  std::vector<Coming> next;   // one of a kind at most, nearest first
};

int rounds_of(const SockInMaking& sock);

// Precondition: 0 <= done.rounds <= rounds_of(sock), and no passes where that is all of them. A
// pass works half of the round's stitches (of a widening round's, some stitches more or fewer, told
// right again when the round is done).
Place place_of(const SockInMaking& sock, PairDone done);

}  // namespace twinround

#include "pace.h"

namespace twinround {

Duration knitting_time(int stitches, Rounds rounds, double stitches_per_minute) {
  constexpr int kTurnsPerRound = 2;
  return Duration::from_minutes(stitches / stitches_per_minute) +
         kTurn * (kTurnsPerRound * rounds.value());
}

}  // namespace twinround

// How long the pair takes at the knitter's pace.
#pragma once

#include "units.h"

namespace twinround {

inline constexpr double kLearnerPace = 15;  // stitches a minute. ASSUMPTION; ordinary knitters 35
                                            // to 42 (Hastings Tribune, 3 June 2022)
inline constexpr Duration kTurn =
    Duration::from_seconds(10);  // ASSUMPTION; two in each round of the pair

// How far a pace may be off, relative: a learner's guessed, or one timed over a round. ASSUMPTION.
inline constexpr double kGuessedPaceError = 0.25;
inline constexpr double kTimedPaceError = 0.10;
// The default is taken as a guess even where it was written out: a field left out and its default
// must read alike.
constexpr double pace_error(double stitches_per_minute) {
  return stitches_per_minute == kLearnerPace ? kGuessedPaceError : kTimedPaceError;
}

// `stitches` are those worked in the pair, `rounds` those of one sock (the two share each turn).
Duration knitting_time(int stitches, Rounds rounds, double stitches_per_minute);

}  // namespace twinround

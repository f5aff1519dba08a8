#include "found.h"

#include <cstdlib>

#include "lost_count.h"

namespace twinround {
namespace {

Found faulty(SeenFault fault) {
  Found found;
  found.fault = fault;
  return found;
}

Found exactly(int rounds) {
  Found found;
  found.rounds = {rounds};
  found.likely = rounds;
  return found;
}

Found by_columns(const PairShape& pair, const Seen& seen) {
  const bool straight = pair.rib.rounds_per_shift == 0;
  if (straight && *seen.columns > 0) return faulty(SeenFault::never_moves);
  const std::optional<int> rounds =
      straight ? seen.since : rounds_seen(pair.rib, {*seen.columns, seen.since});
  if (!rounds) return faulty(SeenFault::too_many_since);
  if (*rounds > pair.rib_rounds) return faulty(SeenFault::beyond_rib);
  return exactly(pair.toe_rounds + *rounds);
}

Found by_place(const PairShape& pair, const Seen& seen) {
  if (pair.rib.rounds_per_shift == 0) return faulty(SeenFault::never_moves);
  if (seen.since > pair.rib.rounds_per_shift) return faulty(SeenFault::too_many_since);
  const bool mirrored = pair.rib.lean == Lean::mirrored && seen.on_second;
  const int place = mirrored ? mirrored_place(pair.rib, pair.stitches, seen.place) : seen.place;
  Found found;
  for (const int rounds : rounds_of_phase(pair.rib, place, seen.since, pair.plain_rounds)) {
    found.rounds.push_back(pair.toe_rounds + rounds);
  }
  if (found.rounds.empty()) return faulty(SeenFault::place_not_reached);
  if (found.rounds.size() == 1) found.likely = found.rounds.front();
  if (!seen.near) return found;
  found.likely = found.rounds.front();
  for (const int rounds : found.rounds) {
    if (std::abs(rounds - *seen.near) < std::abs(*found.likely - *seen.near)) found.likely = rounds;
  }
  return found;
}

}  // namespace

Found find_round(const PairShape& pair, const Seen& seen) {
  if (seen.in_toe) {
    return seen.toe_rounds > pair.toe_rounds ? faulty(SeenFault::beyond_toe)
                                             : exactly(seen.toe_rounds);
  }
  return seen.columns ? by_columns(pair, seen) : by_place(pair, seen);
}

int mirrored_place(const Rib& rib, Stitches stitches, int place) {
  // The second sock's stitch i is the first one's n/2 - 1 - i.
  const int repeat = rib.repeat();
  const int remainder = (rib.knit - stitches.value() / 2 - place) % repeat;
  return remainder < 0 ? remainder + repeat : remainder;
}

}  // namespace twinround

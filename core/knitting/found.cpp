#include "found.h"

#include <cstdlib>

#include "lost_count.h"
#include "spiral.h"

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
  const int shift = pair.rib.rounds_per_shift;
  if (shift == 0 && *seen.columns > 0) return faulty(SeenFault::never_moves);
  const int last = moves_of(pair);
  if (*seen.columns > last) return faulty(SeenFault::beyond_rib);
  if (*seen.columns < last && seen.since > shift) return faulty(SeenFault::too_many_since);
  if (seen.since > most_since(pair, *seen.columns)) return faulty(SeenFault::beyond_cuff);
  return exactly(pair.toe_rounds + shift * *seen.columns + seen.since);
}

Found by_place(const PairShape& pair, const Seen& seen) {
  if (pair.rib.rounds_per_shift == 0) return faulty(SeenFault::never_moves);
  const bool mirrored = pair.rib.lean == Lean::mirrored && seen.on_second;
  const int place = mirrored ? mirrored_place(pair.rib, pair.stitches, seen.place) : seen.place;
  Found found;
  for (const int rounds : rounds_of_phase(pair.rib, place, seen.since, pair.plain_rounds)) {
    found.rounds.push_back(pair.toe_rounds + rounds);
  }
  const int last = moves_of(pair);
  const int in_cuff = pair.rib.rounds_per_shift * last + seen.since;
  const bool ends_so = pair.plain_rounds == pair.rib_rounds && first_place(pair.rib, last) == place;
  if (ends_so && seen.since > most_since(pair, last)) return faulty(SeenFault::beyond_cuff);
  if (ends_so && in_cuff > pair.rib_rounds) found.rounds.push_back(pair.toe_rounds + in_cuff);
  if (found.rounds.empty() && seen.since > pair.rib.rounds_per_shift) {
    return faulty(SeenFault::too_many_since);
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

int moves_of(const PairShape& pair) {
  return pair.rib.rounds_per_shift == 0 ? 0 : seen_after(pair.rib, pair.rib_rounds).columns;
}

int most_since(const PairShape& pair, int columns) {
  const int shift = pair.rib.rounds_per_shift;
  const bool is_last = columns == moves_of(pair);
  return is_last ? pair.rib_rounds + pair.cuff_rounds - shift * columns : shift;
}

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

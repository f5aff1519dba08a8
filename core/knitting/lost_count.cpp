#include "lost_count.h"

#include "spiral.h"

namespace twinround {

SeenRib seen_after(const Rib& rib, int rounds) {
  const int done = rounds - 1;
  return {done / rib.rounds_per_shift, done % rib.rounds_per_shift + 1};
}

std::optional<int> rounds_seen(const Rib& rib, SeenRib seen) {
  if (rib.rounds_per_shift < 1 || seen.columns < 0) return {};
  if (seen.since < 1 || seen.since > rib.rounds_per_shift) return {};
  return rib.rounds_per_shift * seen.columns + seen.since;
}

std::vector<int> rounds_of_phase(const Rib& rib, int place, int since, int most) {
  std::vector<int> rounds;
  for (int columns = 0;; ++columns) {
    const std::optional<int> seen = rounds_seen(rib, {columns, since});
    if (!seen || *seen > most) return rounds;
    if (first_place(rib, columns) == place) rounds.push_back(*seen);
  }
}

int rounds_apart(int rounds_of_a, int rounds_of_b) {
  return rounds_of_a - rounds_of_b;
}

WaysOut ways_out(const Misstep& misstep) {
  constexpr int kSocks = 2;
  constexpr int kEdgesOfARib = 2;
  const int n = misstep.stitches.value();
  WaysOut ways;
  ways.rounds_to_unpick = misstep.rounds_since;
  ways.stitches_to_unpick = kSocks * misstep.rounds_since * n;
  ways.columns_to_hook = kSocks * kEdgesOfARib * (n / misstep.repeat);
  ways.stitches_to_hook = ways.columns_to_hook * misstep.rounds_since;
  return ways;
}

}  // namespace twinround

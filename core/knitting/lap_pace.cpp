#include "lap_pace.h"

#include <algorithm>

#include "pace.h"

namespace twinround {

Duration turns_of_a_lap() {
  return knitting_time(0, Rounds(1), kLearnerPace);
}

double pace_of(const std::vector<Lap>& laps) {
  std::vector<double> paces;
  paces.reserve(laps.size());
  for (const Lap& lap : laps) {
    paces.push_back(lap.stitches / (lap.time - turns_of_a_lap()).minutes());
  }
  std::sort(paces.begin(), paces.end());
  const std::size_t middle = paces.size() / 2;
  return paces.size() % 2 == 1 ? paces[middle] : (paces[middle - 1] + paces[middle]) / 2;
}

}  // namespace twinround

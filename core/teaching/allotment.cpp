#include "allotment.h"

#include <algorithm>
#include <numeric>

#include "rounding.h"

namespace twinround {

std::vector<int> allot(int pairs, const std::vector<double>& shares) {
  std::vector<int> given(shares.size());
  const double all = std::accumulate(shares.begin(), shares.end(), 0.0);
  if (all <= 0) return given;

  std::vector<double> remainders;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const double due = pairs * (shares[i] / all);
    given[i] = floor_count(due);
    remainders.push_back(due - given[i]);
  }
  int left = pairs - std::accumulate(given.begin(), given.end(), 0);
  for (; left > 0; --left) {
    std::size_t most = 0;
    for (std::size_t i = 1; i < shares.size(); ++i) {
      const bool tied = !clearly_above(remainders[most], remainders[i]);
      if (clearly_above(remainders[i], remainders[most]) ||
          (tied && clearly_above(shares[i], shares[most]))) {
        most = i;
      }
    }
    ++given[most];
    remainders[most] -= 1;
  }
  return given;
}

}  // namespace twinround

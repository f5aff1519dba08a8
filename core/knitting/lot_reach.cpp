#include "lot_reach.h"

#include <algorithm>
#include <cstddef>

#include "rounding.h"

namespace twinround {

Length LotReach::yarn(int done, int to, bool bind_off) const {
  const Length before = done == 0 ? course_.tail : course_.used[static_cast<std::size_t>(done)];
  const Length run = course_.used[static_cast<std::size_t>(to)] - before + 2 * course_.tail;
  return bind_off ? run + course_.bind_off : run;
}

bool LotReach::does(Length half, int done, int to, bool bind_off) const {
  return at_least(half.mm(), (1 + margin_) * yarn(done, to, bind_off).mm());
}

int LotReach::farthest(Length half, int done, int most, bool bind_off) const {
  int low = done;
  int high = most;
  while (low < high) {
    const int middle = high - (high - low) / 2;
    if (does(half, done, middle, bind_off)) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

int LotReach::on(Length half, int done) const {
  if (done < all() && does(half, done, all(), true)) return all();
  return farthest(half, done, std::max(done, all() - 1), false);
}

bool LotReach::is_inside(int round) const {
  if (round <= 0 || round >= all()) return false;
  const Section below = course_.rounds[static_cast<std::size_t>(round - 1)].section;
  const Section above = course_.rounds[static_cast<std::size_t>(round)].section;
  return below == above && (below == Section::toe || below == Section::cuff);
}

}  // namespace twinround

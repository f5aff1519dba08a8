#include "rounding.h"

#include <algorithm>
#include <cmath>

namespace twinround {

namespace {

// Counts never come near this; it keeps the conversion defined whatever a caller computed.
constexpr double kLimit = 1e9;

int to_int(double whole) {
  if (std::isnan(whole)) return 0;
  if (whole > kLimit) return static_cast<int>(kLimit);
  if (whole < -kLimit) return static_cast<int>(-kLimit);
  return static_cast<int>(whole);
}

}  // namespace

bool clearly_above(double a, double b) {
  return a - b > kTie;
}
bool at_least(double a, double b) {
  return a - b >= -kTie;
}

int round_half_up(double x) {
  return to_int(std::floor(x + 0.5 + kTie));
}
int floor_count(double x) {
  return to_int(std::floor(x + kTie));
}
int ceil_count(double x) {
  return to_int(std::ceil(x - kTie));
}

int nearest_on_lattice(double x, int step, int offset, Tie tie) {
  x = std::clamp(x, -kLimit, kLimit);
  const int below = offset + step * floor_count((x - offset) / step);
  const int above = below + step;
  const double to_below = x - below;
  const double to_above = above - x;
  if (clearly_above(to_below, to_above)) return above;
  if (clearly_above(to_above, to_below)) return below;
  return tie == Tie::up ? above : below;
}

int nearest_multiple(double x, int step, Tie tie) {
  return nearest_on_lattice(x, step, 0, tie);
}

}  // namespace twinround

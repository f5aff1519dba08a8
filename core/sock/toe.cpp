#include "toe.h"

#include <algorithm>
#include <cmath>

#include "rounding.h"

namespace twinround {

namespace {

constexpr int kStitchesPerIncrease = 4;  // two at each half's edges
constexpr int kLeastCastOn = 8;
constexpr int kMostIncreasesTogether = 2;

// Rounds that m increases need after a plain round: never more than two together.
int rounds_for(int increases) {
  return increases == 0 ? 0 : increases + (increases - 1) / kMostIncreasesTogether;
}

// What the outline would be after a share x of the way from the tip, were stitches not whole.
double ideal_stitches(ToeShape shape, double cast_on, double full, double x) {
  const double way = shape == ToeShape::round ? std::sqrt(1.0 - (1.0 - x) * (1.0 - x)) : x;
  return cast_on + (full - cast_on) * way;
}

}  // namespace

Stitches cast_on_total(Stitches n, double tip_share) {
  const int nearest =
      nearest_on_lattice(tip_share * n.value(), kStitchesPerIncrease, n.value(), Tie::up);
  // n is even, so the lattice holds 8 or else 6 and 10, where the tie goes up: never under 8.
  const int least = nearest_on_lattice(kLeastCastOn, kStitchesPerIncrease, n.value(), Tie::up);
  return Stitches(std::min(std::max(nearest, least), n.value()));
}

Toe shape_toe(const ToeInput& input) {
  Toe toe;
  toe.cast_on = cast_on_total(input.stitches, input.tip_share);
  toe.wraps = toe.cast_on.value() / 2;
  toe.increase_rounds = (input.stitches - toe.cast_on).value() / kStitchesPerIncrease;
  const int asked = round_half_up(input.share * input.foot_length * input.gauge);
  const int rounds = std::max(1 + rounds_for(toe.increase_rounds), asked);

  int current = toe.cast_on.value();
  int left = toe.increase_rounds;
  int together = 0;
  toe.counts.push_back(current);  // round 1 is plain: it sets the wraps up
  for (int j = 2; j <= rounds; ++j) {
    const double x = static_cast<double>(j - 1) / (rounds - 1);
    const double ideal =
        ideal_stitches(input.shape, toe.cast_on.value(), input.stitches.value(), x);
    const bool allowed = left > 0 && together < kMostIncreasesTogether;
    const bool due = at_least(ideal - current, kStitchesPerIncrease / 2.0);
    const bool cannot_wait = rounds - j < rounds_for(left);
    if (allowed && (due || cannot_wait)) {
      current += kStitchesPerIncrease;
      --left;
      ++together;
    } else {
      together = 0;
    }
    toe.counts.push_back(current);
  }
  return toe;
}

RoundLine plain_round(Stitches n) {
  const HalfLine half{{Work::knit, n.value() / 2}};
  return {half, half};
}

RoundLine increase_round(Stitches before) {
  HalfLine half;
  append_run(half, Work::knit, 1);
  append_run(half, Work::make_one_right, 1);
  append_run(half, Work::knit, before.value() / 2 - 2);
  append_run(half, Work::make_one_left, 1);
  append_run(half, Work::knit, 1);
  return {half, half};
}

}  // namespace twinround

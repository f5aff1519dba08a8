#include "toe.h"

#include <algorithm>
#include <cmath>

#include "rounding.h"

namespace twinround {

namespace {

constexpr int kStitchesPerSide = 2;  // one at each half's edge on that side
constexpr int kStitchesPerIncrease = 2 * kStitchesPerSide;
constexpr int kLeastCastOn = 8;
constexpr int kMostIncreasesTogether = 2;
// A left and right toe: the great-toe side is at full width after this share of the toe.
// ASSUMPTION.
constexpr double kGreatSideShare = 0.6;

// Rounds that m increases need when `together` rounds of increase come just before: never more than
// two together.
int rounds_for(int increases, int together) {
  if (increases == 0) return 0;
  return increases + (increases - 1 + together) / kMostIncreasesTogether;
}

double round_outline(double x) {
  return std::sqrt(1.0 - (1.0 - x) * (1.0 - x));
}

// One side of the toe, widening from the tip to full width.
struct Side {
  bool great = false;
  int made = 0;
  int left = 0;

  // What the outline would be after a share x of the way from the tip, were increases not whole.
  double ideal(ToeShape shape, double x) const {
    const int all = made + left;
    switch (shape) {
      case ToeShape::round:
        return all * round_outline(x);
      case ToeShape::even:
        return all * x;
      case ToeShape::left_right:
        break;
    }
    return all * (great ? round_outline(std::min(x / kGreatSideShare, 1.0)) : x);
  }
  bool is_due(ToeShape shape, double x) const {
    return left > 0 && at_least(ideal(shape, x) - made, 0.5);
  }
  // Whether waiting now would leave too few of the rounds to come, `together` increase rounds then
  // standing behind them.
  bool cannot_wait(int rounds_to_come, int together) const {
    return left > 0 && rounds_to_come < rounds_for(left, together);
  }
  void widen() {
    ++made;
    --left;
  }
};

ToeSides sides_of(bool great, bool little) {
  if (great && little) return ToeSides::both;
  if (great) return ToeSides::great;
  return little ? ToeSides::little : ToeSides::none;
}

// One round's decision. A side that waits while the other widens is no nearer to its next plain
// round.
ToeSides decide(const Side& great, const Side& little, ToeShape shape, double x, int rounds_to_come,
                int together) {
  if (together == kMostIncreasesTogether) return ToeSides::none;
  bool widen_great = great.is_due(shape, x) || great.cannot_wait(rounds_to_come, 0);
  bool widen_little = little.is_due(shape, x) || little.cannot_wait(rounds_to_come, 0);
  if (widen_little) widen_great |= great.cannot_wait(rounds_to_come, together + 1);
  if (widen_great) widen_little |= little.cannot_wait(rounds_to_come, together + 1);
  return sides_of(widen_great, widen_little);
}

HalfLine toe_half(int stitches, bool widen_start, bool widen_end) {
  HalfLine half;
  append_run(half, Work::knit, 1);
  if (widen_start) append_run(half, Work::make_one_right, 1);
  append_run(half, Work::knit, stitches - 2);
  if (widen_end) append_run(half, Work::make_one_left, 1);
  append_run(half, Work::knit, 1);
  return half;
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
  const int increases = (input.stitches - toe.cast_on).value() / kStitchesPerIncrease;
  const int asked = round_half_up(input.share * input.foot_length * input.gauge);
  const int rounds = std::max(1 + rounds_for(increases, 0), asked);

  Side great{true, 0, increases};
  Side little{false, 0, increases};
  int together = 0;
  for (int j = 1; j <= rounds; ++j) {
    // Round 1 is plain: it sets the wraps up.
    const double x = j == 1 ? 0 : static_cast<double>(j - 1) / (rounds - 1);
    const ToeSides sides =
        j == 1 ? ToeSides::none : decide(great, little, input.shape, x, rounds - j, together);
    if (sides == ToeSides::both || sides == ToeSides::great) great.widen();
    if (sides == ToeSides::both || sides == ToeSides::little) little.widen();
    together = sides == ToeSides::none ? 0 : together + 1;
    toe.increase_rounds += sides == ToeSides::none ? 0 : 1;
    toe.sides.push_back(sides);
    toe.counts.push_back(toe.cast_on.value() + kStitchesPerSide * (great.made + little.made));
  }
  return toe;
}

RoundLine toe_round(Stitches before, ToeSides sides) {
  const bool great = sides == ToeSides::both || sides == ToeSides::great;
  const bool little = sides == ToeSides::both || sides == ToeSides::little;
  const int half = before.value() / 2;
  return {toe_half(half, great, little), toe_half(half, little, great)};
}

}  // namespace twinround

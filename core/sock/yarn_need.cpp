#include "yarn_need.h"

#include "quadrature.h"
#include "rounding.h"

namespace twinround {

YarnNeed yarn_need(const YarnInput& input) {
  YarnNeed need;
  need.cast_on = input.loop * input.cast_on.value();
  need.toe = input.loop * input.toe_stitches;
  need.spiral = input.loop * input.spiral_stitches;
  need.widening = input.loop * input.widening_stitches;
  need.cuff = input.loop * input.cuff_stitches;
  need.bind_off = kBindOffPerGirth * input.edge_girth;
  need.tails = 2.0 * kTail;
  need.sock = need.cast_on + need.toe + need.spiral + need.widening + need.cuff + need.bind_off +
              need.tails;
  need.pair = 2.0 * need.sock;
  need.with_margin = need.pair * (1.0 + input.margin);
  return need;
}

Balls balls_for(Length need, Length ball_length) {
  const double exact = need / ball_length;
  Balls balls;
  balls.count = ceil_count(exact);
  const double spare = balls.count - exact;  // of a ball
  balls.spare = spare * ball_length;
  const bool nearly_all_used = at_least(kJustShare, spare);
  const bool barely_begun = balls.count > 1 && at_least(kJustShare, 1.0 - spare);
  balls.just = nearly_all_used || barely_begun;
  return balls;
}

Rounds rounds_left(Length left, Length bind_off, Length loop, Stitches n) {
  const Length usable = left - bind_off - kTail;
  if (usable <= Length::from_mm(0)) return Rounds(0);
  return Rounds(floor_count(usable / (loop * n.value())));
}

Length yarn_of_last_round(Length bind_off, Length loop, Stitches n) {
  return loop * n.value() + bind_off + kTail;
}

double stripe_rounds(Length stripe, Length loop, Stitches n) {
  return stripe / (loop * n.value());
}

double yarn_error(double stitches_error, double rounds_error, double model_error) {
  // The stitch and round counts move with the gauge, so both errors stand in full: never less than
  // the truth, and for loop geometry, where a loop shrinks as the gauge grows, up to twice it.
  return in_quadrature(stitches_error, rounds_error, model_error);
}

}  // namespace twinround

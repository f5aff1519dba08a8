#include "yarn_left.h"

#include <algorithm>
#include <cstddef>

#include "rounding.h"

namespace twinround {
namespace {

constexpr Length kNothing = Length::from_mm(0);

// Stitches of each round, in order; a sock knit past its plan went on as the plan ends.
std::vector<int> stitches_of_rounds(const Plan& plan, int rounds_done) {
  std::vector<int> stitches;
  for (const RoundSpan& span : plan.rounds) {
    stitches.insert(stitches.end(), static_cast<std::size_t>(span.rounds), span.stitches);
  }
  const auto done = static_cast<std::size_t>(rounds_done);
  if (done > stitches.size()) stitches.resize(done, plan.edge_stitches.value());
  return stitches;
}

// How high the ankle bends above the floor: the way in front cuts the corner there and is shorter
// than that over the heel by twice as much.
Length bend_of_ankle(const SockLength& sock) {
  return sock.length * (sock.back_strain - sock.front_strain) / 2.0;
}

bool lies_under_ball(const Plan& plan, int round) {
  const Length at = Rounds(round) / plan.gauge.rounds;
  const Length foot = plan.foot.length.value;
  return at >= kBallFrom * foot && at <= kBallTo * foot;
}

}  // namespace

YarnLeft yarn_left(const Plan& plan, Length leg_height, const SockInHand& sock) {
  const std::vector<int> stitches = stitches_of_rounds(plan, sock.rounds_done);
  const int all = plan.length.total.value();
  YarnLeft left;
  left.rounds_to_go = std::max(0, all - sock.rounds_done);
  left.left_over = kNothing;
  left.kept_back = plan.yarn.need.bind_off + kTail;
  const Length usable = sock.yarn_left - left.kept_back;
  if (usable < kNothing) {
    // The last rounds are the ones to give back.
    Length given = kNothing;
    for (int r = sock.rounds_done; r > 0 && given + usable < kNothing; --r) {
      given = given + plan.yarn.loop * stitches[static_cast<std::size_t>(r - 1)];
      left.rounds_to_unpick += 1;
    }
  } else {
    Length used = kNothing;
    for (int r = sock.rounds_done; r < all; ++r) {
      used = used + plan.yarn.loop * stitches[static_cast<std::size_t>(r)];
      if (clearly_above(used.mm(), usable.mm())) break;
      left.rounds += 1;
    }
    if (sock.rounds_done + left.rounds >= all) {
      const Length beyond = usable - used;
      left.rounds += floor_count(beyond / (plan.yarn.loop * plan.edge_stitches.value()));
      left.rounds_over = left.rounds - left.rounds_to_go;
      left.left_over = std::max(beyond, kNothing);
    }
  }
  left.last_round = sock.rounds_done + left.rounds - left.rounds_to_unpick;
  left.rounds_short = std::max(0, all - left.last_round);
  const Length leg = leg_height + (Rounds(left.last_round) / plan.gauge.rounds) -
                     (Rounds(all) / plan.gauge.rounds);
  left.leg_height = std::max(leg, kNothing);
  left.reaches_leg = leg > bend_of_ankle(plan.length);
  return left;
}

std::optional<Length> loop_as_knit(const Plan& plan, int rounds_done, Length used) {
  if (rounds_done < 1) return {};
  const std::vector<int> stitches = stitches_of_rounds(plan, rounds_done);
  int worked = plan.toe.cast_on.value();
  for (int r = 0; r < rounds_done; ++r) worked += stitches[static_cast<std::size_t>(r)];
  const Length in_stitches = used - kTail;
  if (in_stitches <= kNothing) return {};
  return in_stitches / static_cast<double>(worked);
}

int round_to_join(const Plan& plan, int rounds_done, Length left_in_ball) {
  const std::vector<int> stitches = stitches_of_rounds(plan, rounds_done);
  Length used = kTail;  // the old ball's end is darned in too
  int last = 0;
  for (std::size_t r = static_cast<std::size_t>(rounds_done); r < stitches.size(); ++r) {
    const int round = static_cast<int>(r) + 1;
    if (!lies_under_ball(plan, round)) last = round;
    used = used + plan.yarn.loop * stitches[r];
    if (clearly_above(used.mm(), left_in_ball.mm())) break;
  }
  return last;
}

}  // namespace twinround

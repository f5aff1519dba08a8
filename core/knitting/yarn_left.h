// What the yarn on the scale still makes of each sock.
#pragma once

#include <optional>
#include <vector>

#include "plan.h"

namespace twinround {

// One sock in the making: rounds knit of it, and yarn left for it.
struct SockInHand {
  int rounds_done = 0;
  Length yarn_left;
};

struct YarnLeft {
  int rounds = 0;        // that can still be knit, bind-off and one tail kept back
  int rounds_to_go = 0;  // of the plan, not yet knit
  int rounds_short = 0;  // of those the plan still asks for; 0 where the yarn lasts
  int rounds_over = 0;   // that can be knit beyond the plan's last
  Length left_over;      // once the plan is knit and bound off; nothing where the yarn falls short
  Length leg_height;     // floor to edge, if the sock ends with the last of them; never below 0
  bool reaches_leg = false;  // whether that is above the bend of the ankle
  Length kept_back;          // for the bind-off and its tail
  int last_round = 0;        // of the sock, from 1: after it the bind-off
  int rounds_to_unpick = 0;  // where not even the bind-off is left: so many give it back
};

// Precondition: rounds_done >= 0. `leg_height` is the plan's request's. Beyond the plan's last
// round the sock goes on as it ended.
YarnLeft yarn_left(const Plan& plan, Length leg_height, const SockInHand& sock);

// Yarn in one stitch as it really went: used over the stitches worked, the cast-on and one tail
// among it. Nothing before the first round is done.
std::optional<Length> loop_as_knit(const Plan& plan, int rounds_done, Length used);

// The ball of the foot rests on these shares of the foot's length from its tip; a knot there is
// felt at every step. ASSUMPTION.
inline constexpr double kBallFrom = 0.15;
inline constexpr double kBallTo = 0.40;

// The last round, from 1, at whose beginning a new ball can be joined before the old one is used
// up: none under the ball of the foot. 0 where there is none left.
int round_to_join(const Plan& plan, int rounds_done, Length left_in_ball);

}  // namespace twinround

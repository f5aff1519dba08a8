#include "length.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "rounding.h"

namespace twinround {

namespace {

const double kBend = std::sqrt(0.5);  // the bend lies 45 degrees in front of and above the heel

std::string tenth_of_cm(Length length) {
  const int tenths = ceil_count(length.mm());
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " cm";
}

Problem leg_too_short(Length least) {
  return {"/legHeightMm",
          "leg_too_short",
          {{"leastMm", least.mm()}},
          {},
          "So low a sock ends below the ankle's bend and will not stay on. The least leg for this "
          "foot and cuff is " +
              tenth_of_cm(least) + ", measured from the floor; a shorter cuff lowers it."};
}

Problem no_room_for_rib(Length least) {
  return {
      "/legHeightMm",
      "no_room_for_rib",
      {{"leastMm", least.mm()}},
      {},
      "Toe and cuff take up all the rounds, so none is left for the rib. Make the leg at least " +
          tenth_of_cm(least) + ", or the cuff or the toe shorter."};
}

Problem too_many_rounds(Rounds total) {
  return {"/legHeightMm",
          "too_many_rounds",
          {{"rounds", static_cast<double>(total.value())}, {"max", kMostRounds}},
          {},
          "That comes to " + std::to_string(total.value()) +
              " rounds; at most 2000 can be planned. Check the round gauge and the lengths, and "
              "their units."};
}

}  // namespace

Length heel_depth(Length heel_girth, Length foot_length) {
  const Length depth = heel_girth / 2.0 - kStadium * kHeelBreadthOfFoot * foot_length;
  // A girth too small for any heel of that foot: no depth, rather than one that runs backwards.
  return std::max(depth, Length::from_mm(0));
}

Result<SockLength> divide_length(const LengthInput& input) {
  SockLength sock;
  sock.length = input.foot_length * (1.0 + input.length_ease) + input.leg_height;
  sock.total = Rounds(round_half_up(sock.length * input.gauge));
  sock.cuff = Rounds(round_half_up(input.cuff * input.gauge));
  sock.spiral = sock.total - input.toe - sock.cuff;
  const Length past_heel = input.foot_length * (1.0 + input.length_ease) + kTryOnPastFoot;
  sock.try_on = std::clamp(Rounds(round_half_up(past_heel * input.gauge)), input.toe + Rounds(1),
                           input.toe + std::max(sock.spiral, Rounds(1)));
  sock.heel_depth = heel_depth(input.heel_girth, input.foot_length);

  const Length bend = sock.heel_depth * kBend;
  sock.least_leg = bend + input.cuff;
  // From the tip of the toe under the heel and up the back the path is foot + leg; in front it cuts
  // the corner at the bend, which lies `bend` in front of the heel and `bend` above the floor.
  const Length back = input.foot_length + input.leg_height;
  sock.back_strain = (back - sock.length) / sock.length;
  sock.front_strain = (back - 2.0 * bend - sock.length) / sock.length;

  std::vector<Problem> problems;
  if (!at_least(input.leg_height.mm(), sock.least_leg.mm())) {
    problems.push_back(leg_too_short(sock.least_leg));
  }
  if (sock.spiral < Rounds(1)) {
    const Rounds needed = input.toe + sock.cuff + Rounds(1);
    problems.push_back(
        no_room_for_rib(needed / input.gauge - input.foot_length * (1.0 + input.length_ease)));
  }
  if (sock.total > Rounds(kMostRounds)) problems.push_back(too_many_rounds(sock.total));
  if (!problems.empty()) return problems;
  return sock;
}

}  // namespace twinround

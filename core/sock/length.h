// How long the sock is, how its rounds divide, and what a tube without a heel does at the ankle.
#pragma once

#include "result.h"
#include "units.h"

namespace twinround {

inline constexpr int kMostRounds = 2000;

inline constexpr double kHeelBreadthOfFoot = 0.25;  // ASSUMPTION
// A stadium (two half circles of breadth b joined by straights) of depth d has girth 2 (d - b) + pi
// b, so d = girth/2 - (pi/2 - 1) b.
inline constexpr double kStadium = 0.571;

// How far past its foot the sock is when it is tried on: past the heel. Common practice, no source.
inline constexpr Length kTryOnPastFoot = Length::from_mm(50);

struct LengthInput {
  Length foot_length;
  Length heel_girth;  // measured, or the median for the ball girth
  Length leg_height;  // floor to top edge
  Length cuff;
  double length_ease = -0.04;
  RoundGauge gauge;
  Rounds toe;
};

struct SockLength {
  Length length;
  Rounds total;
  Rounds spiral;
  Rounds cuff;
  Rounds try_on;  // rounds done when it is tried on past the heel: at least one of the rib, none of
                  // the cuff
  Length heel_depth;  // d, from the back of the heel to the bend in front
  Length least_leg;   // d/sqrt(2) + cuff: lower, the sock ends below the ankle's bend
  double back_strain =
      0;  // share of the sock's length by which the path over the heel is longer (+: it stretches)
  double front_strain = 0;  // likewise the path over the instep (-: it bunches)
};

// The heel's depth from its girth, a stadium section: d = girth/2 - 0.571 b, with the heel's
// breadth b a quarter of the foot's length. ASSUMPTION. Never below nothing.
Length heel_depth(Length heel_girth, Length foot_length);

// Refused: leg_too_short at /legHeightMm with the least leg; no_room_for_rib at /legHeightMm when
// toe and cuff leave no spiral round; too_many_rounds past 2000.
Result<SockLength> divide_length(const LengthInput& input);

}  // namespace twinround

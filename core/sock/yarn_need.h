// How much yarn the pair takes, section by section, and what yarn in hand still makes.
#pragma once

#include <optional>

#include "units.h"

namespace twinround {

// Yarn of a stretchy bind-off as a multiple of the widest girth the edge passes. ASSUMPTION.
inline constexpr double kBindOffPerGirth = 3.3;
inline constexpr Length kTail = Length::from_mm(200);  // one at each end. ASSUMPTION
// How far loop geometry and a weighed swatch may be off. ASSUMPTION.
inline constexpr double kGeometryError = 0.10;
inline constexpr double kWeighedError = 0.03;
// "Just": within this share of a ball of a whole number of balls.
inline constexpr double kJustShare = 0.02;

struct YarnInput {
  Length loop;
  Stitches cast_on;
  int toe_stitches = 0;  // worked in one sock's toe, all rounds together; likewise below
  int spiral_stitches = 0;
  int widening_stitches = 0;
  int cuff_stitches = 0;
  Length edge_girth;  // the widest girth the edge must pass
  double margin = 0.10;
};

// Yarn of one sock by section; the seven add up to `sock`.
struct YarnNeed {
  Length cast_on, toe, spiral, widening, cuff, bind_off, tails;
  Length sock;
  Length pair;
  Length with_margin;  // of the pair
};

YarnNeed yarn_need(const YarnInput& input);

// Whole balls for a length, and whether that is a close thing: less than 2 % of a ball to spare, or
// less than 2 % into the last ball.
struct Balls {
  int count = 0;
  bool just = false;
  Length spare;  // left over of the last ball
};
Balls balls_for(Length need, Length ball_length);

// Rounds of n stitches that yarn left on one sock still makes, bind-off and one tail kept back; 0
// if not even those.
Rounds rounds_left(Length left, Length bind_off, Length loop, Stitches n);

// What one sock must still have to begin a last round of n stitches: that round, the bind-off and
// one tail.
Length yarn_of_last_round(Length bind_off, Length loop, Stitches n);

// Rounds of n stitches that one stripe of a self-striping yarn makes.
double stripe_rounds(Length stripe, Length loop, Stitches n);

// Relative error: gauge (stitches and rounds) and the model of the loop, in quadrature.
double yarn_error(double stitches_error, double rounds_error, double model_error);

}  // namespace twinround

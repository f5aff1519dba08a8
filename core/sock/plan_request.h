// What a plan is asked with. Fields left out by the asker stand at their defaults here.
#pragma once

#include <optional>
#include <vector>

#include "feet.h"
#include "gauge.h"
#include "pace.h"
#include "rib.h"
#include "shoe.h"
#include "toe.h"
#include "units.h"

namespace twinround {

struct SwatchInput {
  Fabric fabric = Fabric::stockinette;
  bool washed = true;
  std::optional<Length> needle;
  std::vector<Reading> readings;
  std::optional<Length> stretched_width;  // of the first reading, as far as hands pull it
  std::optional<Mass> mass;
  std::optional<double> mass_stitches;
};

struct YarnChoice {
  std::optional<int> category;
  std::optional<Mass> ball_mass;
  std::optional<Length> ball_length;
  // Another yarn to knit the same sock from, by its label.
  std::optional<Mass> substitute_mass;
  std::optional<Length> substitute_length;
};

struct ShoeInput {
  ShoeScale scale = ShoeScale::eu;
  double size = 0;
};

// Length and ball girth, or shoe and body; what was measured wins over what the shoe suggests.
struct FootInput {
  std::optional<Length> length, ball_girth, heel_ankle_girth, ankle_girth, calf_girth;
  std::optional<ShoeInput> shoe;
  std::optional<Body> body;
};

struct PlanRequest {
  SwatchInput swatch;  // no readings: there is no swatch
  YarnChoice yarn;
  FootInput foot;
  Length leg_height;
  Length cuff = Length::from_mm(30);
  Rib rib;
  double girth_ease = -0.10;
  double length_ease = -0.04;
  double toe_share = 0.25;
  double tip_share = 0.40;
  ToeShape toe_shape = ToeShape::round;
  std::optional<int> stitch_count;
  double stitches_per_minute = kLearnerPace;
  double yarn_margin = 0.10;
  // From the sock on the needles; no asker writes them, core/knitting does. The gauge in
  // stockinette, known better than by swatch or label; and the toe as it is knit, for the count
  // that it ends on.
  std::optional<Gauge> known_gauge;
  std::optional<Toe> known_toe;
};

}  // namespace twinround

// The whole sock: every figure composed from the other files of this folder.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "fabric.h"
#include "feet.h"
#include "fit.h"
#include "gauge.h"
#include "length.h"
#include "line.h"
#include "needle_choice.h"
#include "plan_request.h"
#include "result.h"
#include "rib.h"
#include "serves.h"
#include "stitch_count.h"
#include "toe.h"
#include "units.h"
#include "widening.h"
#include "yarn_need.h"

namespace twinround {

// Raised with every change of a default, a constant or a rule, so that a sheet made under older
// rules can say what changed.
inline constexpr int kRules = 2;

// A foot measure as the plan used it.
struct FootFigure {
  Length value;
  bool estimated = false;
  Length spread;  // give or take; zero when measured
};

struct PlannedFoot {
  FootFigure length, ball_girth, heel_girth, ankle_girth, calf_girth;
};

// Whether the leg's girth at a height hangs on an estimate: below the ankle's height on the ankle
// alone, above the calf's on the calf alone, between on both.
bool leg_estimated_at(const PlannedFoot& foot, Length height);

// The heel girth that the fit is tested with: measured, or the 95th percentile for the ball girth.
Length heel_to_pass(const PlannedFoot& foot);

struct Choice {
  Stitches stitches;
  Length girth;
  double ease = 0;
  double heel_use = 0;
  bool halves_alike = false;
  Length yarn_pair;
  Duration time;
};

enum class Section { toe, spiral, widening, cuff };

// The leg grows wider from here on: the widening round itself and all above it, until the next
// stage or the edge.
struct WideningStage {
  WideRib rib;         // from here on
  int round = 0;       // the widening round, counted from 0 at the first round of the rib
  Length needed_from;  // height above the floor from which the narrower tube would not pass
  int crossing = 0;    // stitches that the first half then has too many (+) or too few: they move
                       // across to the other half
};

// In place of widening: the same count on a larger needle from that height. Its gauge has to be
// swatched.
struct LargerNeedle {
  Length from_height;
  StitchGauge gauge_at_most;  // stitches per length at which the leg passes
  NeedleName needle;  // diameter taken as proportional to the stitch (common practice, no source),
                      // next size named
};

// Equal rounds in a row. `stitches` stand on the needle after each; `line` and `second_line` point
// into Plan::lines.
struct RoundSpan {
  Section section = Section::toe;
  int rounds = 0;
  int stitches = 0;
  int line = 0;
  int second_line = 0;  // equal to `line` where both socks are worked alike
};

// Yarns whose grams a kilometre differ by less knit up alike enough to share a gauge. ASSUMPTION.
inline constexpr double kSameThickness = 0.10;

// Another yarn for the same sock: metres stay, grams and balls follow from its own label.
struct SubstituteYarn {
  double tex = 0;
  double thickness_apart = 0;  // its tex over the first yarn's, less 1
  Mass pair_mass, with_margin_mass;
  Balls balls;
  double tightness = 0;
  Firmness firmness = Firmness::usual;
};

struct YarnFigures {
  Length loop;                          // what the need was computed with
  Length last_round;                    // of one sock: the last round, the bind-off and its tail
  bool weighed = false;                 // else loop geometry
  std::optional<Length> geometry_loop;  // the other one, when both are known
  YarnNeed need;
  double tex = 0;  // grams a kilometre
  double relative_error = 0;
  std::optional<Mass> pair_mass, sock_mass, with_margin_mass;
  bool mass_guessed = false;  // metres in 100 g from the category, not from a ball
  std::optional<Balls> balls;
  std::optional<SubstituteYarn> substitute;
};

// A caution has the shape of a problem; its plan stands. `field` is the input to look at, "" for
// none in particular.
using Caution = Problem;

// How a figure came about: a rule by code, the numbers put in, the code of its source.
struct Working {
  std::string figure;
  std::string rule;
  std::vector<Number> numbers;
  std::string source;
};

struct Plan {
  Gauge gauge;
  std::vector<ReadingGauge> readings;
  int category = 0;
  bool category_given = false;
  PlannedFoot foot;
  Rib rib;
  Stitches stitches;
  std::optional<Stitches> advised;  // absent where no count can be advised
  double girth_ease = 0;
  double girth_error = 0;  // give or take, relative; likewise below
  double rest_girth_error = 0;
  double heel_use_error = 0;
  double time_error = 0;
  Length finished_girth;  // laid flat in stockinette, both sides
  Length rest_girth;      // the rib pulled in
  Length widest_girth;    // the geometric limit
  Length pass_girth;      // the most of it to plan with: a larger girth does not pass
  double heel_use = 0;
  bool halves_alike = false;
  std::vector<Choice> choices;
  std::vector<RibThatFits> ribs_that_fit;  // told only where the rib is the trouble
  Toe toe;
  SockLength length;
  Rounds
      spiral_rounds;  // below the first widening round; with the next they make SockLength::spiral
  Rounds widening_rounds;               // from it to the cuff
  Rounds period;                        // of the rib as it starts
  std::optional<Angle> pitch;           // absent for a rib that goes nowhere though it moves (1x1)
  LegFit leg_fit;                       // widened where it had to be
  bool edge_estimated = false;          // whether its girth at the edge hangs on an estimate
  std::vector<WideningStage> widening;  // empty: the count of the foot passes all the way up
  std::optional<LargerNeedle> larger_needle;
  Stitches edge_stitches;            // on the needle at the top
  std::optional<FeetServed> serves;  // absent where not even the foot it was planned for
  std::vector<RoundLine> lines;
  std::vector<RoundSpan> rounds;
  YarnFigures yarn;
  NeedleChoice needle;
  std::optional<Firmness>
      firmness;  // absent where neither ball nor category tells the yarn's thickness
  Duration time;
  std::vector<Caution> cautions;
  std::vector<Working> working;
};

// The gauge that a plan would be computed with, and the widest one stitch goes: what there is to
// know before there is a foot. Refused as a plan is for swatch and label.
struct FabricInHand {
  Gauge gauge;
  Length widest_stitch;
};
Result<FabricInHand> fabric_in_hand(const PlanRequest& request);

// Every problem at once, or the plan. The request's own ranges are the caller's to check (core/wire
// does); what only the computation can tell (a count, a length, a foot out of range) is refused
// here.
Result<Plan> make_plan(const PlanRequest& request);

}  // namespace twinround

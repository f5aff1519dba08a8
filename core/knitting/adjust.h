// Measured on the needles: what the sock in hand comes to, and what can still be done about it.
#pragma once

#include <optional>
#include <vector>

#include "needle_gauge.h"
#include "plan.h"
#include "result.h"
#include "toe_turn.h"

namespace twinround {

struct AdjustRequest {
  PlanRequest plan;  // what the sock was begun with; its count is the one on the needles
  int rounds_done = 0;
  std::optional<NeedleReading> toe;  // absent: nothing is known of its gauge but what was swatched
  bool is_swatch_foreign = false;    // the swatch is none of this yarn: the toe counts alone
};

enum class Remedy { keep, change, restart };

// One way to go on, by the gauge as it is known now.
struct Way {
  Remedy remedy = Remedy::keep;
  Stitches stitches;
  double girth_ease = 0;
  Length finished_girth;
  double heel_use = 0;
  bool passes = false;         // over heel and leg, at 0.85 of the widest
  Rounds total;                // of one sock, by this way
  int from = 0;                // the last round that stays; 0 is the cast-on
  Rounds to_go;                // from there on
  Rounds lost;                 // knit already and unpicked
  Rounds over;                 // knit already, more than this way asks for
  std::vector<ToeStep> steps;  // of the toe, worked otherwise than begun (change only)
  int rib_from = 0;            // the rib's first round: from here on all is this way's own plan
  Length yarn_pair;            // all of it, the rounds that are knit among it
  Length yarn_to_go;  // of the pair, bind-off and tails with it; all of it where begun anew
  Duration time_to_go;
};

struct Adjustment {
  Plan planned;  // as it was begun
  Plan known;    // the same sock by the gauge as it is known now
  std::optional<NeedleGauge>
      gauge;              // present where the toe was measured, and then the ways are too
  std::vector<Way> ways;  // keep first; change and restart where another count is advised
  Remedy advised = Remedy::keep;
};

// A girth within this share of the one asked for is kept: a hand's own gauge strays as much over
// twenty evenings. ASSUMPTION.
inline constexpr double kGirthToKeep = 0.03;
// Another count that brings the girth nearer by no more than this share is not worth a round of
// it. ASSUMPTION.
inline constexpr double kGirthWorth = 0.01;

// Refused as a plan is; rounds_done past the plan at /needles/roundsDone; at /needles/stitches more
// of them over the width than a whole round has, twice what one layer holds; at /needles/rounds
// more of them over the length than are done.
Result<Adjustment> adjust(const AdjustRequest& request);

}  // namespace twinround

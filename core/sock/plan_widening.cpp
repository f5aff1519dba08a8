#include <algorithm>
#include <string>

#include "message_words.h"
#include "plan_parts.h"
#include "rounding.h"
#include "tube.h"

namespace twinround {

namespace {

Problem leg_too_wide(const LegFit& fit) {
  return {"/legHeightMm",
          "leg_too_wide",
          {{"heightMm", fit.fails_from->mm()},
           {"girthMm", fit.widest_girth.mm()},
           {"use", fit.worst_use}},
          {},
          "The leg is " + cm(fit.widest_girth) +
              " round, and no widening of this rib passes it. Make the leg end below " +
              cm(*fit.fails_from) + ", choose a finer rib, or a larger needle."};
}

Problem no_room_to_widen(Rounds spiral, std::size_t stages) {
  return {
      "/legHeightMm",
      "no_room_to_widen",
      {{"rounds", static_cast<double>(spiral.value())}, {"stages", static_cast<double>(stages)}},
      {},
      "The leg needs more widening rounds than the rib has rounds. Make the cuff or the toe "
      "shorter."};
}

// The widening round lies just below the height where it is needed, so that the wider tube is
// there.
int round_below(Length height, const LegToWiden& input) {
  const int above = ceil_count((input.edge_height - height) * input.gauge);
  return (input.spiral + input.cuff).value() - above - 1;
}

// In knitting order, one round apart at least, and below the cuff: the cuff begins as wide as it
// ends.
void place_rounds(std::vector<WideningStage>& stages, const LegToWiden& input) {
  const int count = static_cast<int>(stages.size());
  int earliest = 0;
  for (int i = 0; i < count; ++i) {
    WideningStage& stage = stages[static_cast<std::size_t>(i)];
    const int latest = input.spiral.value() - (count - i);
    stage.round = std::clamp(round_below(stage.needed_from, input), earliest, latest);
    earliest = stage.round + 1;
  }
}

LegFit fit_of(const LegToWiden& input, Stitches n) {
  return fit_leg(input.leg, input.edge_height, n, input.widest_stitch);
}

}  // namespace

Result<WidenedLeg> widen_leg(const LegToWiden& input) {
  WidenedLeg widened;
  WideRib rib = input.rib;
  widened.fit = fit_of(input, rib.stitches);
  while (widened.fit.fails_from) {
    const auto wider = next_wider(rib);
    if (!wider) return leg_too_wide(widened.fit);
    widened.stages.push_back({*wider, 0, *widened.fit.fails_from});
    rib = *wider;
    widened.fit = fit_of(input, rib.stitches);
  }
  if (static_cast<int>(widened.stages.size()) > input.spiral.value()) {
    return no_room_to_widen(input.spiral, widened.stages.size());
  }
  place_rounds(widened.stages, input);
  return widened;
}

LargerNeedle larger_needle(const LegFit& unwidened, StitchGauge gauge, Length needle) {
  const double wider = unwidened.worst_use / kPassUse;
  const Length diameter = wider * needle;
  return {*unwidened.fails_from, gauge * (1.0 / wider), next_named_needle(diameter)};
}

}  // namespace twinround

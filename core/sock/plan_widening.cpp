#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

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
          "The leg is " + cm(fit.widest_girth) + " round, and no widening of this rib passes it. " +
              (*fit.fails_from > Length::from_mm(0)
                   ? "Make the leg end below " + cm(*fit.fails_from) + ", choose"
                   : "Choose") +
              " a finer rib, or a larger needle."};
}

Problem no_room_to_widen(Rounds spiral, std::size_t stages) {
  return {
      "/legHeightMm",
      "no_room_to_widen",
      {{"rounds", static_cast<double>(spiral.value())}, {"stages", static_cast<double>(stages)}},
      {},
      "The leg needs more widening rounds than the rib has rounds below the place that needs them. "
      "Make the cuff or the toe shorter."};
}

// The widening round lies just below the height where it is needed, so that the wider tube is
// there.
int round_below(Length height, const LegToWiden& input) {
  const int above = ceil_count((input.edge_height - height) * input.gauge);
  return (input.spiral + input.cuff).value() - above - 1;
}

// Below the cuff, which begins as wide as it ends, and one round apart at least: where two are
// needed at one height the earlier goes lower, for the later one cannot wait. Whether the rib has
// the rounds for that.
bool place_rounds(std::vector<WideningStage>& stages, const LegToWiden& input) {
  int next = input.spiral.value();
  for (auto stage = stages.rbegin(); stage != stages.rend(); ++stage) {
    stage->round = std::min(round_below(stage->needed_from, input), next - 1);
    next = stage->round;
  }
  return next >= 0;
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
  if (!place_rounds(widened.stages, input)) {
    return no_room_to_widen(input.spiral, widened.stages.size());
  }
  return widened;
}

LargerNeedle larger_needle(const LegFit& unwidened, StitchGauge gauge, Length needle) {
  const double wider = unwidened.worst_use / kPassUse;
  const Length diameter = wider * needle;
  return {*unwidened.fails_from, gauge * (1.0 / wider), next_named_needle(diameter)};
}

}  // namespace twinround

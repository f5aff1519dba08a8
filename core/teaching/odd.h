// What is odd about a sock, the most harmful first: what a teacher looks at before a stitch is cast
// on.
#pragma once

#include <optional>
#include <vector>

#include "plan.h"
#include "units.h"

namespace twinround {

// What it does if nobody looks, worst first.
enum class Harm {
  body,    // presses on the foot or the leg, or will not go over the heel
  supply,  // there is not enough to finish with
  sock,    // a sock that wears through, sags, or is not the one planned
  doubt,   // only a figure that is less sure than it might be
};

struct Oddity {
  Harm harm = Harm::doubt;
  Problem what;  // a caution of the plan, or one of the codes below
};

// The codes that no plan has: tight_on_leg, yarn_short, margin_short, hand_needs_ball, gauge_dense,
// gauge_loose, readings_scatter.

// Yarn that the knitter has for the pair. Grams, where they are given, overrule balls.
struct InHand {
  std::optional<double> balls;
  std::optional<Mass> mass;
};

// A girth that is worn all day, not passed once, is told from this share of the widest the tube
// goes: what stretches so far presses, and marks on the skin or a cold foot are its signs.
// ASSUMPTION; a sock passes at up to 0.85.
inline constexpr double kWornUse = 0.75;
// Readings of one swatch that scatter more (coefficient of variation, of stitches or rounds) are
// not of one fabric, or were miscounted: a stitch in twenty. ASSUMPTION.
inline constexpr double kScatterDoubt = 0.05;

// Every caution of the plan and what the plan does not look at, in order of harm; of equals in the
// order of the plan. A gauge is beyond its category when it lies outside of the published range by
// more than its own standard error. `plan` is the request's own.
std::vector<Oddity> oddities(const PlanRequest& request, const Plan& plan, const InHand& in_hand);

}  // namespace twinround

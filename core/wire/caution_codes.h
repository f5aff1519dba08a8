// Every code that a caution may carry. The schema lists them; core/sock is held to them by a test.
#pragma once

#include <string_view>

namespace twinround {

inline constexpr std::string_view kCautionCodes[] = {
    // The gauge and the rib.
    "guessed_gauge",
    "flat_swatch",
    "unwashed_swatch",
    "stretch_doubtful",
    "rib_swatch",
    "shift_every_round",
    "moss_stitch",
    "no_lean",
    // The fit.
    "ease_outside",
    "ease_off",
    "heel_moved_count",
    "heel_tight",
    "heel_will_not_pass",
    "leg_widened",
    "stitch_crosses",
    "heel_below_ball",
    "girths_estimated",
    "foot_estimated",
    // Yarn and tools.
    "yarn_sources_disagree",
    "mass_needs_ball",
    "yarn_guessed",
    "loose_fabric",
    "firm_fabric",
    "substitute_differs",
    "balls_just",
    "balls_barely_begun",
    "no_cable_long_enough",
};

}  // namespace twinround

// Every code that `working` may carry: the figure explained, the rule it came by, the source of
// that rule. The schema lists them; core/sock is held to them by a test.
#pragma once

#include <string_view>

namespace twinround {

inline constexpr std::string_view kWorkingFigures[] = {
    // The fit.
    "footLength",
    "ballGirth",
    "gauge",
    "gaugeError",
    "mmPerStitch",
    "geometryMmPerStitch",
    "restGirthMm",
    "firmness",
    "stitchCount",
    "heelUse",
    "legFit",
    "widening",
    // The making.
    "castOn",
    "toeRounds",
    "toeIncreases",
    "lengthMm",
    "totalRounds",
    "cuffRounds",
    "spiralRounds",
    "pitch",
    "strains",
    "bindOffYarn",
    "mPerSock",
    "mWithMargin",
    "balls",
    "substitute",
    "gPerPair",
    "needle",
    "cable",
    "minutes",
};

inline constexpr std::string_view kWorkingRules[] = {
    // The fit.
    "shoe_length",
    "ball_girth_estimate",
    "gauge_pooled",
    "gauge_from_rib",
    "gauge_from_label",
    "gauge_error",
    "label_error",
    "loop_weighed",
    "loop_geometry",
    "rest_girth",
    "firmness",
    "stitch_count",
    "stitch_count_named",
    "heel_use",
    "leg_fit",
    "widening",
    // The making.
    "cast_on",
    "toe_rounds",
    "toe_increases",
    "sock_length",
    "total_rounds",
    "cuff_rounds",
    "spiral_rounds",
    "pitch",
    "strains",
    "bind_off_yarn",
    "yarn_sock",
    "yarn_pair",
    "balls",
    "substitute",
    "mass",
    "needle",
    "cable",
    "time",
};

inline constexpr std::string_view kWorkingSources[] = {
    "munden-1959",
    "spencer",
    "cyc-standard-yarn-weight",
    "dillmont",
    "ansur-ii",
    "brannock",
    "iso-19407",
    "european-shoe-table",
    "from-memory",
    "trade-rule",
    "common-practice",
    "geometry",
    "definition",
    "assumption",
};

}  // namespace twinround

// Every code that a problem may carry. The schema lists them; core/sock is held to them by a test.
#pragma once

#include <string_view>

namespace twinround {

inline constexpr std::string_view kProblemCodes[] = {
    // The text as a whole.
    "unknown_question",
    "too_large_text",
    "bad_json",
    "too_deep",
    "not_an_object",
    "newer_version",
    // A field.
    "required",
    "unknown_field",
    "repeated_field",
    "wrong_type",
    "out_of_range",
    "not_finite",
    "number_too_large",
    "not_whole",
    "unknown_word",
    "too_many_items",
    "needs_partner",
    // What only the computation can tell.
    "count_out_of_range",
    "heel_out_of_reach",
    "not_a_count",
    "leg_too_short",
    "no_room_for_rib",
    "too_many_rounds",
    "leg_too_wide",
    "no_room_to_widen",
    "stretched_too_narrow",
    "shoe_out_of_range",
    "girth_out_of_range",
};

}  // namespace twinround

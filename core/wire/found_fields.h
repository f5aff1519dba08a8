// The question `found` as plain data: what is asked, and what comes back.
#pragma once

#include <span>
#include <string_view>

#include "fields.h"

namespace twinround {

std::span<const Field> found_request_fields();
std::span<const Field> found_reply_fields();

inline constexpr std::string_view kSeenInWords = "toe | rib";
inline constexpr std::string_view kFoundLeanWords = "left | right | mirrored";

// What a problem with it may be called besides what one with a plan is.
inline constexpr std::string_view kFoundCodes[] = {
    "beyond_toe", "too_many_since", "beyond_rib", "beyond_cuff", "never_moves", "place_not_reached",
};

}  // namespace twinround

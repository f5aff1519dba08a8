// The question `place`: where a pair in the making stands.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "fields.h"

namespace twinround {

// A whole reply.
std::string answer_place(std::string_view text);

// Request and reply as plain data.
std::vector<Field> place_request_fields();
std::span<const Field> place_reply_fields();

// What a problem with it may be called besides what one with a plan is.
inline constexpr std::string_view kPlaceCodes[] = {"lap_too_short"};

}  // namespace twinround

// The question `adjust` as plain data, as fields.h has that of `plan`: what is asked, and what
// comes back.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "fields.h"

namespace twinround {

// The request of `plan` that the sock was begun with, and under `/needles` what is measured on it.
std::vector<Field> adjust_request_fields();

// What a problem with it may be called besides what one with a plan is.
inline constexpr std::string_view kAdjustCodes[] = {"past_the_plan"};

// The object `adjust` of a reply.
std::span<const Field> adjust_reply_fields();

}  // namespace twinround

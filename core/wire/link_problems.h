// What can be wrong with a link.
#pragma once

#include <string_view>

#include "result.h"

namespace twinround {

// Why a link does not open.
enum class LinkFault { none, not_ours, newer, too_long, cut, damaged };

// The code of each but none, in their order.
inline constexpr std::string_view kFaultCodes[] = {"link_not_ours", "link_newer", "link_too_long",
                                                   "link_cut", "link_damaged"};

// The other codes that the question `link` may answer with, as of any request.
inline constexpr std::string_view kLinkRequestCodes[] = {
    "too_large_text", "bad_json",         "too_deep",   "not_an_object",  "newer_version",
    "required",       "unknown_field",    "wrong_type", "repeated_field", "out_of_range",
    "not_finite",     "number_too_large", "not_whole",  "unknown_word",   "too_many_items",
};

// Precondition: a fault.
Problem link_problem(LinkFault fault);

}  // namespace twinround

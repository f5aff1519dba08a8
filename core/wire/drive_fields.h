// The question `drive` as plain data, as fields.h has that of `plan`: what is asked, and what comes
// back.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "fields.h"

namespace twinround {

// The request of `plan` without what is of one foot, and under `/drive` whom it is for. Of the leg
// there is one height for all, or so much a foot length.
std::vector<Field> drive_request_fields();

// What a problem with it may be called besides what one with a plan is; and a caution.
inline constexpr std::string_view kDriveCodes[] = {"nobody_served"};
inline constexpr std::string_view kDriveCautionCodes[] = {
    "feet_of_soldiers",     "children_estimated",  "fewer_sizes_do",  "share_not_reached",
    "better_not_ruled_out", "lot_of_another_yarn", "lots_fall_short",
};

// The object `drive` of a reply.
std::span<const Field> drive_reply_fields();

}  // namespace twinround

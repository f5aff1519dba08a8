// The question `weeks`: how far each pair of a class comes in each meeting.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "fields.h"

namespace twinround {

// A whole reply. A knitter is what of the class's request is his own (a yarn, a foot, a pace); one
// without a plan is told with its problems, and the others stand.
std::string answer_weeks(std::string_view text);

// Request and reply as plain data.
std::span<const Field> weeks_request_fields();
std::span<const Field> weeks_reply_fields();
// The schema's definition `knitterWeeks`.
std::span<const Field> knitter_weeks_fields();

}  // namespace twinround

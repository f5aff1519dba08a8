// The question `supply`: one pair for every yarn by every size.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "fields.h"

namespace twinround {

// A whole reply. A cell is the class's request with the row's part and then the column's part laid
// over it; it tells the figures of that plan or why there is none, and what to change in the
// class's request to open it as a plan.
std::string answer_supply(std::string_view text);

// Request and reply as plain data.
std::span<const Field> supply_request_fields();
std::span<const Field> supply_reply_fields();

}  // namespace twinround

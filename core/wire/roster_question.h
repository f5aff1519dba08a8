// The question `roster`: a whole class seat by seat.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "fields.h"

namespace twinround {

// A thousand seats as they are commonly told (swatch, yarn, foot and pace) are 0.3 MB; with every
// field of a request said and three readings each, under 1 MiB. A single plan is never near it.
inline constexpr std::size_t kMostRosterBytes = std::size_t{1024} * 1024;

// A whole reply. A seat is what of the class's request is its own (seat_fields). One that cannot be
// read or planned is told with its problems, their fields those of its own request, and the others
// stand.
std::string answer_roster(std::string_view text);

// Request and reply as plain data.
std::span<const Field> roster_request_fields();
std::span<const Field> roster_reply_fields();

}  // namespace twinround

// The question `found`: back to the round from what is seen.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// A whole reply.
std::string answer_found(std::string_view text);

}  // namespace twinround

// The question `stripes`: stripes and leftovers on a pair.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// A whole reply.
std::string answer_stripes(std::string_view text);

}  // namespace twinround

// The one door of the core: a question by name and its JSON text in, the reply's JSON text out.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// Answers "plan"; "drive": sizes for many feet; and "link": a sheet made into a link, or a link
// opened. Always returns a whole
// reply: {"ok":true,...} or
// {"ok":false,...,"problems":[...]}; an unknown question, text over 64 KiB and text that is no JSON
// object are refused the same way. Never throws.
std::string answer(std::string_view question, std::string_view text);

}  // namespace twinround

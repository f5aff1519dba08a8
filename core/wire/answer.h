// The one door of the core: a question by name and its JSON text in, the reply's JSON text out.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// Answers "plan"; "adjust": what is measured on the needles; "place": where a pair in the making
// stands; "found": its round found again; "stripes": colours and leftovers on it; "supply", "weeks"
// and "roster", of a class; "odd", what is odd about one pair; "drive", sizes for many feet; and
// "link": a sheet made into a link, or a link opened. Always returns a whole reply: {"ok":true,...}
// or {"ok":false,..., "problems":[...]}; an unknown question, too large a text (64 KiB; of a sock
// in the making 320 KiB, of "roster" 1 MiB) and text that is no JSON object are refused the same
// way. Never throws.
std::string answer(std::string_view question, std::string_view text);

}  // namespace twinround

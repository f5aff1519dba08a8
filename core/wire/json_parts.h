// A JSON text cut into the texts of its parts, so that each can be read by a table of its own.
#pragma once

#include <string_view>
#include <vector>

namespace twinround {

// The texts of the values of an object or a list, in order; keys are not told. They point into
// `text`. Precondition: the text was read (json_reader) and is not broken.
std::vector<std::string_view> parts_of(std::string_view text);

}  // namespace twinround

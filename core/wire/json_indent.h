// JSON for people's eyes.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// The same JSON with one value a line, indented by two spaces, and a newline at the end.
// Precondition: valid JSON without white space between its tokens.
std::string indent_json(std::string_view compact);

}  // namespace twinround

// A look over the text before it is parsed, for tokens at which the parser would stop though the
// rest can well be read.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace twinround {

enum class NullMeaning { null, not_finite, too_large };

// `text` is the text with NaN, Infinity, -Infinity and numbers past the range of a double written
// as null; `nulls` says of each null in it, in order, what it stands for.
struct TokenScan {
  std::string text;
  std::vector<NullMeaning> nulls;
};

TokenScan scan_tokens(std::string_view text);

// The place after the string that opens at `at`; the end of the text where it does not close.
std::size_t end_of_string(std::string_view text, std::size_t at);

}  // namespace twinround

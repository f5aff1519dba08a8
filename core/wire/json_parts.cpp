#include "json_parts.h"

#include "token_scan.h"

namespace twinround {
namespace {

constexpr std::string_view kSpace = " \t\n\r";

bool is_blank(std::string_view text) {
  return text.find_first_not_of(kSpace) == std::string_view::npos;
}

}  // namespace

std::vector<std::string_view> parts_of(std::string_view text) {
  std::vector<std::string_view> parts;
  int depth = 0;
  std::size_t begin = 0;  // of the part being walked over
  const auto close_part = [&](std::size_t end) {
    const std::string_view part = text.substr(begin, end - begin);
    if (!is_blank(part)) parts.push_back(part);  // an empty list has none
    begin = end + 1;
  };
  for (std::size_t at = 0; at < text.size(); ++at) {
    switch (text[at]) {
      case '"':
        at = end_of_string(text, at) - 1;
        break;
      case '{':
      case '[':
        if (++depth == 1) begin = at + 1;
        break;
      case ':':
        if (depth == 1) begin = at + 1;  // what stood before was a key
        break;
      case ',':
        if (depth == 1) close_part(at);
        break;
      case '}':
      case ']':
        if (depth-- == 1) close_part(at);
        break;
      default:
        break;
    }
  }
  return parts;
}

}  // namespace twinround

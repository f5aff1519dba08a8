#include "json_indent.h"

namespace twinround {

std::string indent_json(std::string_view compact) {
  std::string text;
  std::size_t depth = 0;
  const auto new_line = [&text, &depth] {
    text += '\n';
    text.append(2 * depth, ' ');
  };
  bool in_string = false;
  for (std::size_t at = 0; at < compact.size(); ++at) {
    const char c = compact[at];
    if (in_string) {
      text += c;
      if (c == '\\') text += compact[++at];
      if (c == '"') in_string = false;
      continue;
    }
    const bool empty =
        at + 1 < compact.size() && (compact[at + 1] == '}' || compact[at + 1] == ']');
    switch (c) {
      case '{':
      case '[':
        text += c;
        ++depth;
        if (!empty) new_line();
        break;
      case '}':
      case ']': {
        --depth;
        const bool was_empty = compact[at - 1] == '{' || compact[at - 1] == '[';
        if (!was_empty) new_line();
        text += c;
        break;
      }
      case ',':
        text += c;
        new_line();
        break;
      case ':':
        text += ": ";
        break;
      default:
        in_string = c == '"';
        text += c;
    }
  }
  return text + '\n';
}

}  // namespace twinround

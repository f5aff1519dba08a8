#include "token_scan.h"

#include <cmath>
#include <cstdlib>
#include <optional>

namespace twinround {
namespace {

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

bool is_token_char(char c) {
  return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-' || c == '+' ||
         c == '.';
}

std::size_t skip_digits(std::string_view token, std::size_t at) {
  while (at < token.size() && is_digit(token[at])) ++at;
  return at;
}

// The grammar of RFC 8259: what is no number there is left for the parser to refuse.
bool is_json_number(std::string_view token) {
  std::size_t at = token.starts_with('-') ? 1 : 0;
  const std::size_t whole = at;
  at = skip_digits(token, at);
  if (at == whole || (token[whole] == '0' && at > whole + 1)) return false;
  if (at < token.size() && token[at] == '.') {
    const std::size_t fraction = ++at;
    at = skip_digits(token, at);
    if (at == fraction) return false;
  }
  if (at < token.size() && (token[at] == 'e' || token[at] == 'E')) {
    ++at;
    if (at < token.size() && (token[at] == '+' || token[at] == '-')) ++at;
    const std::size_t exponent = at;
    at = skip_digits(token, at);
    if (at == exponent) return false;
  }
  return at == token.size();
}

// Without an exponent it takes more than 300 digits to leave the range of a double.
bool may_be_too_large(std::string_view token) {
  return token.size() > 300 || token.find_first_of("eE") != std::string_view::npos;
}

std::optional<NullMeaning> null_meaning(std::string_view token) {
  if (token == "null") return NullMeaning::null;
  if (token == "NaN" || token == "Infinity" || token == "-Infinity") return NullMeaning::not_finite;
  if (may_be_too_large(token) && is_json_number(token) &&
      std::isinf(std::strtod(std::string(token).c_str(), nullptr))) {
    return NullMeaning::too_large;
  }
  return std::nullopt;
}

}  // namespace

std::size_t end_of_string(std::string_view text, std::size_t at) {
  for (++at; at < text.size(); ++at) {
    if (text[at] == '"') return at + 1;
    if (text[at] == '\\') ++at;
  }
  return text.size();
}

TokenScan scan_tokens(std::string_view text) {
  TokenScan scan;
  scan.text.reserve(text.size() + 64);
  std::size_t at = 0;
  while (at < text.size()) {
    std::size_t end = at + 1;
    if (text[at] == '"') {
      end = end_of_string(text, at);
      scan.text += text.substr(at, end - at);
    } else if (is_token_char(text[at])) {
      while (end < text.size() && is_token_char(text[end])) ++end;
      const std::string_view token = text.substr(at, end - at);
      const auto meaning = null_meaning(token);
      if (meaning) scan.nulls.push_back(*meaning);
      scan.text += meaning ? "null" : token;
    } else {
      // The parser takes a zero byte for the end of the text; any other control character it
      // refuses.
      scan.text += text[at] == '\0' ? '\x01' : text[at];
    }
    at = end;
  }
  return scan;
}

}  // namespace twinround

#include "json_writer.h"

#include <array>
#include <cmath>

#include <nlohmann/json.hpp>

namespace twinround {

std::string json_number(double value) {
  // The digits that the library's own dump writes (Grisu2): libc++ 13 has no std::to_chars for
  // doubles, and asking for them here spares the page a whole writer. The sum turns -0 into 0.
  std::array<char, 64> buffer;
  const char* end =
      nlohmann::detail::to_chars(buffer.data(), buffer.data() + buffer.size(), value + 0.0);
  std::string digits(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
  if (digits.ends_with(".0")) digits.resize(digits.size() - 2);
  return digits;
}

JsonWriter& JsonWriter::key(std::string_view name) {
  if (needs_comma_) written_ += ',';
  quoted(name);
  written_ += ':';
  needs_comma_ = false;
  return *this;
}

void JsonWriter::open_object() {
  value("{");
  needs_comma_ = false;
}

void JsonWriter::close_object() {
  written_ += '}';
  needs_comma_ = true;
}

void JsonWriter::open_list() {
  value("[");
  needs_comma_ = false;
}

void JsonWriter::close_list() {
  written_ += ']';
  needs_comma_ = true;
}

void JsonWriter::real(double number) {
  all_finite_ = all_finite_ && std::isfinite(number);
  value(std::isfinite(number) ? json_number(number) : "0");
}

void JsonWriter::whole(int number) {
  value(std::to_string(number));
}

void JsonWriter::yes_no(bool yes) {
  value(yes ? "true" : "false");
}

void JsonWriter::text(std::string_view words) {
  value("");
  quoted(words);
}

void JsonWriter::literal(std::string_view json) {
  value(json);
}

void JsonWriter::value(std::string_view json) {
  if (needs_comma_) written_ += ',';
  written_ += json;
  needs_comma_ = true;
}

void JsonWriter::quoted(std::string_view words) {
  constexpr char kHex[] = "0123456789abcdef";
  written_ += '"';
  for (const char c : words) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      written_ += '\\';
      written_ += c;
    } else if (byte < 0x20) {
      written_ += "\\u00";
      written_ += kHex[byte >> 4U];
      written_ += kHex[byte & 0xFU];
    } else {
      written_ += c;
    }
  }
  written_ += '"';
}

}  // namespace twinround

#include "json_writer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>

#include <nlohmann/json.hpp>

namespace twinround {
namespace {

using NumberText = std::array<char, 64>;

// The digits that the library's own dump writes (Grisu2): libc++ 13 has no std::to_chars for
// doubles, and asking for them here spares the page a whole writer. The sum turns -0 into 0.
std::string_view digits_of(double value, NumberText& text) {
  const char* end = nlohmann::detail::to_chars(text.data(), text.data() + text.size(), value + 0.0);
  std::string_view digits(text.data(), static_cast<std::size_t>(end - text.data()));
  if (digits.ends_with(".0")) digits.remove_suffix(2);
  return digits;
}

bool needs_escape(char c) {
  return c == '"' || c == '\\' || static_cast<unsigned char>(c) < 0x20;
}

}  // namespace

std::string json_number(double value) {
  NumberText text;
  return std::string(digits_of(value, text));
}

JsonWriter& JsonWriter::key(std::string_view name) {
  if (needs_comma_) add(',');
  quoted(name);
  add(':');
  needs_comma_ = false;
  return *this;
}

void JsonWriter::open_object() {
  value("{");
  needs_comma_ = false;
}

void JsonWriter::close_object() {
  add('}');
  needs_comma_ = true;
}

void JsonWriter::open_list() {
  value("[");
  needs_comma_ = false;
}

void JsonWriter::close_list() {
  add(']');
  needs_comma_ = true;
}

void JsonWriter::real(double number) {
  all_finite_ = all_finite_ && std::isfinite(number);
  NumberText text;
  value(std::isfinite(number) ? digits_of(number, text) : "0");
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
  if (needs_comma_) add(',');
  add(json);
  needs_comma_ = true;
}

void JsonWriter::quoted(std::string_view words) {
  constexpr std::string_view kHex = "0123456789abcdef";
  add('"');
  std::size_t plain = 0;  // where the stretch not yet added begins
  for (std::size_t at = 0; at < words.size(); ++at) {
    const char c = words[at];
    if (!needs_escape(c)) continue;
    add(words.substr(plain, at - plain));
    plain = at + 1;
    if (c == '"' || c == '\\') {
      add('\\');
      add(c);
    } else {
      add("\\u00");
      add(kHex[static_cast<unsigned char>(c) >> 4U]);
      add(kHex[static_cast<unsigned char>(c) & 0xFU]);
    }
  }
  add(words.substr(plain));
  add('"');
}

void JsonWriter::add(std::string_view json) {
  if (json.empty()) return;
  if (room_.size() - used_ < json.size()) make_room(json.size());
  std::memcpy(room_.data() + used_, json.data(), json.size());
  used_ += json.size();
}

void JsonWriter::add(char c) {
  if (used_ == room_.size()) make_room(1);
  room_[used_++] = c;
}

void JsonWriter::make_room(std::size_t bytes) {
  constexpr std::size_t kFirstRoom = 16384;  // most plans fit
  room_.resize(std::max(kFirstRoom, 2 * room_.size() + bytes));
}

}  // namespace twinround

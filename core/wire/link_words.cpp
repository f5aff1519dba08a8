#include "link_words.h"

#include <cstdint>

#include "link_number.h"

namespace twinround {
namespace {

constexpr int kMostBytesEach = 4;  // of a character
constexpr int kByteValues = 256;

// The bytes of the character at the front, 0 where they are none; only the shortest form of each
// counts, so that one text has one spelling.
std::size_t front_character(std::string_view text, std::uint32_t& character) {
  const auto byte = [&](std::size_t at) { return static_cast<std::uint8_t>(text[at]); };
  const std::uint32_t first = byte(0);
  const std::size_t size = first < 0x80   ? 1
                           : first < 0xC2 ? 0
                           : first < 0xE0 ? 2
                           : first < 0xF0 ? 3
                           : first < 0xF5 ? 4
                                          : 0;
  if (size == 0 || size > text.size()) return 0;
  character = size == 1 ? first : first & (0xFFU >> (size + 1));
  for (std::size_t at = 1; at < size; ++at) {
    if ((byte(at) & 0xC0U) != 0x80) return 0;
    character = (character << 6U) | (byte(at) & 0x3FU);
  }
  if (size == 3 && (character < 0x800 || (character >= 0xD800 && character < 0xE000))) return 0;
  if (size == 4 && (character < 0x10000 || character > 0x10FFFF)) return 0;
  return size;
}

bool is_gap(std::uint32_t c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029;
}

bool is_hidden(std::uint32_t c) {
  const bool is_control = c < 0x20 || (c >= 0x7F && c < 0xA0);
  const bool turns_text = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  return is_control || turns_text || c == 0xFEFF;
}

void pass_text(LinkNumber& number, std::string& text, int most_characters) {
  const int size = number.pass(static_cast<int>(text.size()), most_characters * kMostBytesEach + 1);
  text.resize(static_cast<std::size_t>(size));
  for (char& c : text) {
    c = static_cast<char>(number.pass(static_cast<std::uint8_t>(c), kByteValues));
  }
}

// The rare one last.
void pass_words(LinkNumber& number, int version, LinkWords& words) {
  pass_text(number, words.title, kTitleMost);
  pass_text(number, words.note, kNoteMost);
  if (version >= 2) words.yarns = number.pass(words.yarns, kYarnChoices);
}

bool is_fit(std::string_view text, int most) {
  return tidy_words(text) == text && count_characters(text) <= most;
}

}  // namespace

std::string tidy_words(std::string_view text) {
  std::string tidy;
  bool has_gap = false;
  while (!text.empty()) {
    std::uint32_t character = 0;
    const std::size_t size = front_character(text, character);
    if (size > 0 && is_gap(character)) {
      has_gap = true;
    } else if (size > 0 && !is_hidden(character)) {
      if (has_gap && !tidy.empty()) tidy += ' ';
      has_gap = false;
      tidy += text.substr(0, size);
    }
    text.remove_prefix(size > 0 ? size : 1);
  }
  return tidy;
}

int count_characters(std::string_view text) {
  int count = 0;
  for (const char c : text) count += (static_cast<std::uint8_t>(c) & 0xC0U) == 0x80 ? 0 : 1;
  return count;
}

std::string write_words(int version, const LinkWords& words) {
  LinkNumber number;
  LinkWords said = words;
  pass_words(number, version, said);
  return number.letters();
}

bool read_words(int version, std::string_view letters, LinkWords& words) {
  LinkNumber number(letters);
  pass_words(number, version, words);
  const bool is_said = version == 1 ? !words.title.empty() || !words.note.empty() : words.yarns > 0;
  return is_said && number.is_spent() && is_fit(words.title, kTitleMost) &&
         is_fit(words.note, kNoteMost);
}

}  // namespace twinround

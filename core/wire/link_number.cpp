#include "link_number.h"

#include <algorithm>

namespace twinround {

int letter_value(char letter) {
  if (letter >= '0' && letter <= '9') return letter - '0';
  if (letter >= 'A' && letter <= 'Z') return letter - 'A' + 10;
  if (letter >= 'a' && letter <= 'z') return letter - 'a' + 36;
  return -1;
}

char letter_of(int value) {
  return "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"[value];
}

LinkNumber::LinkNumber(std::string_view letters) : is_read_(true) {
  for (const char letter : letters) {
    left_.push_back(static_cast<std::uint8_t>(std::max(0, letter_value(letter))));
  }
}

// Long division by the radix, as on paper: the remainder is the value, the quotient stays.
int LinkNumber::pass(int value, int radix) {
  if (!is_read_) {
    written_.emplace_back(value, radix);
    return value;
  }
  int rest = 0;
  for (std::uint8_t& letter : left_) {
    rest = rest * kLetters + letter;
    letter = static_cast<std::uint8_t>(rest / radix);
    rest %= radix;
  }
  return rest;
}

std::string LinkNumber::letters() const {
  std::vector<std::uint8_t> number;  // the least significant letter first
  for (auto part = written_.rbegin(); part != written_.rend(); ++part) {
    int carry = part->first;
    for (std::uint8_t& letter : number) {
      carry += letter * part->second;
      letter = static_cast<std::uint8_t>(carry % kLetters);
      carry /= kLetters;
    }
    for (; carry > 0; carry /= kLetters) {
      number.push_back(static_cast<std::uint8_t>(carry % kLetters));
    }
  }
  std::string letters;
  for (auto value = number.rbegin(); value != number.rend(); ++value) letters += letter_of(*value);
  return letters;
}

bool LinkNumber::is_spent() const {
  return std::all_of(left_.begin(), left_.end(), [](std::uint8_t letter) { return letter == 0; });
}

std::string fixed_letters(std::int64_t number, int letters) {
  std::string text(static_cast<std::size_t>(letters), '0');
  for (auto letter = text.rbegin(); letter != text.rend(); ++letter) {
    *letter = letter_of(static_cast<int>(number % kLetters));
    number /= kLetters;
  }
  return text;
}

std::int64_t read_fixed(std::string_view letters) {
  std::int64_t number = 0;
  for (const char letter : letters) number = number * kLetters + letter_value(letter);
  return number;
}

}  // namespace twinround

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

LinkNumber::LinkNumber(std::string_view letters) : is_read_(true), left_(letters) {
  for (char& letter : left_) letter = static_cast<char>(std::max(0, letter_value(letter)));
}

// Long division by the radix, as on paper: the remainder is the value, the quotient stays.
int LinkNumber::pass(int value, int radix) {
  if (!is_read_) {
    written_.push_back(value);
    written_.push_back(radix);
    return value;
  }
  int rest = 0;
  for (char& letter : left_) {
    rest = rest * kLetters + letter;
    letter = static_cast<char>(rest / radix);
    rest %= radix;
  }
  return rest;
}

std::string LinkNumber::letters() const {
  std::string number;  // values of letters, the least significant first
  for (std::size_t at = written_.size(); at > 0; at -= 2) {
    int carry = written_[at - 2];
    for (char& letter : number) {
      carry += letter * written_[at - 1];
      letter = static_cast<char>(carry % kLetters);
      carry /= kLetters;
    }
    for (; carry > 0; carry /= kLetters) number += static_cast<char>(carry % kLetters);
  }
  std::reverse(number.begin(), number.end());
  for (char& letter : number) letter = letter_of(letter);
  return number;
}

bool LinkNumber::is_spent() const {
  return left_.find_first_not_of('\0') == std::string::npos;
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

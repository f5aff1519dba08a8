// The number inside a link: many small numbers folded into one, written in letters and digits.
//
// Each small number has a radix, how many values it can take. Folding is what a clock does with
// hours, minutes and seconds: value + radix x (everything that follows). So nothing is wasted on
// places that a value can never fill, and values of nought at the end cost nothing at all.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace twinround {

// 0-9, A-Z, a-z: what no mail program, chat or printer changes, and no address has to escape.
inline constexpr int kLetters = 62;
// The value of a letter, -1 for what is none; and back.
int letter_value(char letter);
char letter_of(int value);

// Folds when written and unfolds when read by one and the same call, so that what is written and
// what is read cannot come apart.
class LinkNumber {
 public:
  LinkNumber() = default;                         // to be written
  explicit LinkNumber(std::string_view letters);  // to be read; any other character reads as 0

  bool is_read() const { return is_read_; }
  // Writing: takes the value in and gives it back. Reading: gives the next value.
  // 0 <= value < radix <= 2^24.
  int pass(int value, int radix);
  // What was written, the most significant letter first and without noughts before it.
  std::string letters() const;
  // Whether everything has been read: a number with something left over was not written here.
  bool is_spent() const;

 private:
  bool is_read_ = false;
  std::vector<int> written_;  // value, radix, value, radix
  std::string left_;          // values of letters, what is still to be read
};

// A number in so many letters, noughts before it. Precondition: 0 <= number < 62^letters.
std::string fixed_letters(std::int64_t number, int letters);
// Precondition: letters alone, 10 of them at most.
std::int64_t read_fixed(std::string_view letters);

}  // namespace twinround

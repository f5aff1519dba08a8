#include "link_number.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <utility>
#include <vector>

namespace twinround {
namespace {

constexpr unsigned kSeed = 6215;

TEST(LinkNumber, LettersAreDigitsCapitalsAndSmallOnes) {
  const std::string all = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
  for (int value = 0; value < kLetters; ++value) {
    EXPECT_EQ(letter_of(value), all[static_cast<std::size_t>(value)]);
    EXPECT_EQ(letter_value(all[static_cast<std::size_t>(value)]), value);
  }
  int letters = 0;
  for (int c = -128; c < 128; ++c) letters += letter_value(static_cast<char>(c)) >= 0 ? 1 : 0;
  EXPECT_EQ(letters, kLetters);
}

// 3 h 25 min 7 s = 7 + 60 x (25 + 60 x 3) = 12307 s = 3 x 62^2 + 12 x 62 + 31.
TEST(LinkNumber, FoldsAsAClockDoes) {
  LinkNumber number;
  number.pass(7, 60);
  number.pass(25, 60);
  number.pass(3, 24);
  EXPECT_EQ(number.letters(), "3CV");
  LinkNumber back("3CV");
  EXPECT_EQ(back.pass(0, 60), 7);
  EXPECT_EQ(back.pass(0, 60), 25);
  EXPECT_FALSE(back.is_spent());
  EXPECT_EQ(back.pass(0, 24), 3);
  EXPECT_TRUE(back.is_spent());
}

TEST(LinkNumber, NoughtsAtTheEndCostNothing) {
  LinkNumber number;
  number.pass(61, 62);
  for (int i = 0; i < 100; ++i) number.pass(0, 5000);
  EXPECT_EQ(number.letters(), "z");
  EXPECT_EQ(LinkNumber().letters(), "");
}

TEST(LinkNumber, ReadsBackWhateverWasWritten) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  for (int i = 0; i < 2000; ++i) {
    std::vector<std::pair<int, int>> parts(random() % 60);
    LinkNumber number;
    for (auto& [value, radix] : parts) {
      radix = static_cast<int>(random() % (1U << (1 + random() % 24))) + 1;
      value = static_cast<int>(random() % static_cast<unsigned>(radix));
      if (random() % 4 == 0) value = radix - 1;
      EXPECT_EQ(number.pass(value, radix), value);
    }
    LinkNumber back(number.letters());
    for (const auto& [value, radix] : parts) ASSERT_EQ(back.pass(0, radix), value);
    ASSERT_TRUE(back.is_spent());
  }
}

TEST(LinkNumber, InSoManyLetters) {
  EXPECT_EQ(fixed_letters(0, 3), "000");
  EXPECT_EQ(fixed_letters(12307, 4), "03CV");
  EXPECT_EQ(read_fixed("03CV"), 12307);
  EXPECT_EQ(read_fixed(fixed_letters(56800235583, 6)), 56800235583);  // 62^6 - 1
  EXPECT_EQ(fixed_letters(56800235583, 6), "zzzzzz");
}

}  // namespace
}  // namespace twinround

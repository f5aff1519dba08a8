#include "colour_repeat.h"

#include <gtest/gtest.h>

#include <string>

#include "ten_rounds.h"

namespace twinround {
namespace {

using test::metres;

// "A3 B2": colour A three metres, then B two.
std::vector<Stripe> stripes(const std::string& words) {
  std::vector<Stripe> told;
  for (std::size_t at = 0; at < words.size(); at += 3) {
    told.push_back({words[at] - 'A', metres(words[at + 1] - '0')});
  }
  return told;
}

std::string told(const std::vector<Stripe>& pieces) {
  std::string words;
  for (const Stripe& piece : pieces) {
    if (!words.empty()) words += ' ';
    words += static_cast<char>('A' + piece.colour);
    std::string metres = std::to_string(piece.yarn.m());
    metres.erase(metres.find_last_not_of("0.") + 1);
    words += metres.empty() ? "0" : metres;
  }
  return words;
}

TEST(ARepeat, IsToldAsShortAsItCanBe) {
  const struct {
    const char* words;
    const char* short_words;
    double metres;
    double shift;
  } rows[] = {
      {"A3", "A3", 3, 0},
      {"A3 A2", "A5", 5, 0},
      {"A3 B2", "A3 B2", 5, 0},
      {"A1 B2 A2", "B2 A3", 5, 1},     // the last A and the first are one stripe
      {"A3 B2 A3 B2", "A3 B2", 5, 0},  // told twice
      {"A3 B2 A3 C2", "A3 B2 A3 C2", 10, 0},
      {"A1 B2 A2 B2 A1", "B2 A2", 4, 1},  // two repeats, begun in the middle of one
  };
  for (const auto& row : rows) {
    const ColourRepeat repeat = shortest_repeat(stripes(row.words));
    EXPECT_EQ(told(repeat.stripes), row.short_words) << row.words;
    EXPECT_NEAR(repeat.length.m(), row.metres, 1e-9) << row.words;
    EXPECT_NEAR(repeat.shift.m(), row.shift, 1e-9) << row.words;
  }
}

TEST(ARepeat, MirrorsWhereItReadsAlikeBothWays) {
  const struct {
    const char* words;
    std::vector<double> mirrors;  // twice the places, in metres
  } rows[] = {
      {"A3", {0}},
      // The middle of A lies at 1.5, that of B at 4.
      {"A3 B2", {3, 3}},
      {"A3 B2 C1", {}},
      {"A3 B2 A3 C2", {3 + 5.0, 0}},
      {"A3 B2 A2 C2", {}},  // the colours would, their lengths do not
      {"A1 B2 A2", {1 + 3.0}},
  };
  for (const auto& row : rows) {
    const ColourRepeat repeat = shortest_repeat(stripes(row.words));
    const std::vector<Length> found = mirrors_of(repeat);
    // Each is held against the colours themselves.
    EXPECT_EQ(found.empty(), row.mirrors.empty()) << row.words;
    for (const Length mirror : found) {
      EXPECT_EQ(told(unwound(repeat, metres(0.5), false, metres(20))),
                told(unwound(repeat, mirror - metres(0.5), true, metres(20))))
          << row.words;
    }
  }
}

TEST(ABall, UnwindsFromAnywhereBothWays) {
  const ColourRepeat repeat = shortest_repeat(stripes("A3 B2 C1"));
  const struct {
    double from;
    bool backwards;
    double metres;
    const char* pieces;
  } rows[] = {
      {0, false, 7, "A3 B2 C1 A1"}, {0, true, 7, "C1 B2 A3 C1"}, {2, false, 2, "A1 B1"},
      {2, true, 3, "A2 C1"},        {3, false, 1, "B1"},         {3, true, 1, "A1"},
      {6, false, 1, "A1"},          {-1, false, 2, "C1 A1"},     {603, false, 3, "B2 C1"},
      {4, true, 2, "B1 A1"},
  };
  for (const auto& row : rows) {
    EXPECT_EQ(told(unwound(repeat, metres(row.from), row.backwards, metres(row.metres))),
              row.pieces)
        << row.from;
  }
}

TEST(ABall, BeginsWhereTheListDidHoweverItIsShortened) {
  const ColourRepeat repeat = shortest_repeat(stripes("A1 B2 A2"));
  EXPECT_EQ(told(unwound(repeat, metres(0), false, metres(5))), "A1 B2 A2");
  EXPECT_EQ(told(unwound(repeat, metres(0), true, metres(5))), "A2 B2 A1");
}

}  // namespace
}  // namespace twinround

#include "link_words.h"

#include <gtest/gtest.h>

#include <string>

#include "link_seal.h"

namespace twinround {
namespace {

std::string times(const std::string& text, int count) {
  std::string all;
  for (int i = 0; i < count; ++i) all += text;
  return all;
}

TEST(LinkWords, PlainTextStaysAsItIs) {
  for (const char* text :
       {"", "a", "Tuesday socks: bring needles 4 & 4½ mm!", "Søkker på tirsdag", "靴下", "גרביים",
        "\xF0\x9F\xA7\xA6", "<b>&amp;</b>", "\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x8F\xAB"}) {
    EXPECT_EQ(tidy_words(text), text);
  }
}

TEST(LinkWords, WhatIsNotToBeSeenOrTurnsTheTextIsLeftOut) {
  EXPECT_EQ(tidy_words("a\x01\x02 b\x7F"), "a b");
  EXPECT_EQ(tidy_words(std::string("a\0b", 3)), "ab");
  EXPECT_EQ(tidy_words("a\xC2\x9F"
                       "b"),
            "ab");
  for (const char* mark :
       {"\xE2\x80\xAA", "\xE2\x80\xAB", "\xE2\x80\xAC", "\xE2\x80\xAD", "\xE2\x80\xAE",
        "\xE2\x81\xA6", "\xE2\x81\xA7", "\xE2\x81\xA8", "\xE2\x81\xA9", "\xEF\xBB\xBF"}) {
    EXPECT_EQ(tidy_words(std::string("so") + mark + "ck"), "sock");
  }
}

TEST(LinkWords, LineEndsAreSpacesAndSpacesStandAlone) {
  EXPECT_EQ(tidy_words("  one\r\n\ttwo  three\xE2\x80\xA8 four \n"), "one two three four");
  EXPECT_EQ(tidy_words(" \n "), "");
}

TEST(LinkWords, BytesThatAreNoUtf8AreLeftOut) {
  for (const char* bad :
       {"\x80", "\xC3", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF0\x80\x80\xAF",
        "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\xE2\x82"}) {
    const std::string tidy = tidy_words(std::string("a") + bad);
    EXPECT_EQ(tidy, "a") << bad;
  }
  EXPECT_EQ(tidy_words("a\xE2\x82z"), "az");
}

TEST(LinkWords, CharactersAreCountedNotBytes) {
  EXPECT_EQ(count_characters(""), 0);
  EXPECT_EQ(count_characters("sock"), 4);
  EXPECT_EQ(count_characters("靴下"), 2);
  EXPECT_EQ(count_characters("\xF0\x9F\xA7\xA6"), 1);
}

TEST(LinkWords, TheLongestWordsFitTheirRoom) {
  const std::string most = "\xF4\x8F\xBF\xBF";  // the last character there is
  const LinkWords fullest = {times(most, kTitleMost), times(most, kNoteMost), kYarnChoices - 1};
  for (const int version : {1, 2}) {
    const std::string letters = write_words(version, fullest);
    EXPECT_GT(letters.size(), 1800U);
    EXPECT_LE(letters.size(), static_cast<std::size_t>(kWordsMost));
    LinkWords back;
    EXPECT_TRUE(read_words(version, letters, back));
    EXPECT_EQ(back.title, fullest.title);
    EXPECT_EQ(back.note, fullest.note);
    EXPECT_EQ(back.yarns, version == 1 ? 0 : fullest.yarns);
  }
}

TEST(LinkWords, YarnsAreSaidWithAndWithoutATitle) {
  for (int yarns = 1; yarns < kYarnChoices; ++yarns) {
    for (const char* title : {"", "Tuesday socks"}) {
      LinkWords back;
      EXPECT_TRUE(read_words(2, write_words(2, {title, "", yarns}), back)) << yarns;
      EXPECT_EQ(back.yarns, yarns);
      EXPECT_EQ(back.title, title);
    }
  }
}

// One sheet, one link: what says no yarn is of version 1, and what says one is not.
TEST(LinkWords, EachVersionSaysItsOwn) {
  LinkWords back;
  EXPECT_FALSE(read_words(2, write_words(1, {"a", "b", 0}), back));
  EXPECT_FALSE(read_words(1, write_words(2, {"a", "b", 1}), back));
  EXPECT_EQ(write_words(2, {"a", "b", 0}), write_words(1, {"a", "b", 0}));
}

TEST(LinkWords, WhatNoSheetWouldSayIsRefused) {
  const auto is_read = [](const std::string& title, const std::string& note) {
    LinkWords one, other;
    const bool is_first = read_words(1, write_words(1, {title, note, 0}), one);
    EXPECT_EQ(read_words(2, write_words(2, {title, note, 255}), other), is_first);
    return is_first;
  };
  EXPECT_TRUE(is_read("a", "b"));
  EXPECT_TRUE(is_read(times("a", kTitleMost), times("b", kNoteMost)));
  EXPECT_FALSE(is_read(times("a", kTitleMost + 1), ""));
  EXPECT_FALSE(is_read("", times("b", kNoteMost + 1)));
  EXPECT_FALSE(is_read("\n", ""));
  EXPECT_FALSE(is_read("a", "b\xE2\x80\xAE"));
  EXPECT_FALSE(is_read("\xFF", "b"));
}

}  // namespace
}  // namespace twinround

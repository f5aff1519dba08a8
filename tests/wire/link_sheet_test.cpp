#include "link_sheet.h"

#include <gtest/gtest.h>

#include <iostream>
#include <random>
#include <string>
#include <utility>
#include <vector>

#include "answer.h"
#include "link_sheets.h"

namespace twinround {
namespace {

constexpr unsigned kSeed = 15062;

std::string letters_of_number(const std::vector<std::pair<int, int>>& folded) {
  LinkNumber number;
  for (const auto& [value, radix] : folded) number.pass(value, radix);
  return number.letters();
}

std::string plan_part(const std::string& link) {
  return link.substr(0, link.find('_'));
}

void expect_alike(const LinkSheet& a, const LinkSheet& b) {
  EXPECT_EQ(a.codes, b.codes);
  EXPECT_EQ(a.view, b.view);
  EXPECT_EQ(a.system, b.system);
  EXPECT_EQ(a.locks, b.locks);
  EXPECT_EQ(a.rules, b.rules);
  EXPECT_EQ(a.rounds, b.rounds);
  EXPECT_EQ(a.stitches, b.stitches);
  EXPECT_EQ(a.words.title, b.words.title);
  EXPECT_EQ(a.words.note, b.words.note);
  EXPECT_EQ(a.words.yarns, b.words.yarns);
}

TEST(LinkSheet, OneReadingIsAboutSixtyLetters) {
  const std::string echo =
      R"("view":"buy","system":"metric","echo":{"stitchCount":40,"totalRounds":120})";
  const std::string link = link_in(answer("link", link_question(example_fields(), echo)));
  std::cout << "the example, every field said: " << link.size() << " letters\n";
  EXPECT_GE(link.size(), 40U);
  EXPECT_LE(link.size(), 70U);
}

// The radices are the same for every sheet that says everything, so no other sheet is longer.
TEST(LinkSheet, TheFullestIsNeverOverTheLimit) {
  const LinkSheet fullest = fullest_sheet();
  const std::string link = write_link(fullest);
  std::cout << "twelve readings, every field at its last value: " << link.size() << " letters\n";
  EXPECT_GT(link.size(), 140U);
  EXPECT_LE(link.size(), static_cast<std::size_t>(kLinkMost));
  expect_alike(opened(link), fullest);
}

TEST(LinkSheet, NorIsAnyOther) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  std::size_t longest = 0;
  for (int i = 0; i < 3000; ++i) {
    LinkSheet sheet = fullest_sheet();
    for (std::size_t row = 0; row < link_rows_1().size(); ++row) {
      const int items = link_rows_1()[row].group == LinkGroup::readings ? kLinkReadings : 1;
      for (int item = 0; item < items; ++item) {
        const int count = value_count(link_rows_1()[row]);
        const int near_end = static_cast<int>(random() % 3);
        int& code = sheet.codes[place_of(static_cast<int>(row), item)];
        code = random() % 4 == 0 ? static_cast<int>(random() % static_cast<unsigned>(count))
                                 : count - 1 - near_end % count;
      }
    }
    sheet.stitches = 8 + static_cast<int>(random() % 393);
    const std::string link = write_link(sheet);
    longest = std::max(longest, link.size());
    const LinkSheet back = opened(link);
    EXPECT_EQ(back.codes, sheet.codes);
    EXPECT_EQ(back.rounds, sheet.rounds);
  }
  EXPECT_LE(longest, static_cast<std::size_t>(kLinkMost));
}

TEST(LinkSheet, EachPartIsSaidAlone) {
  const auto expect_kept = [](void (*change)(LinkSheet&)) {
    LinkSheet sheet = empty_sheet();
    sheet.rules = 2;
    change(sheet);
    expect_alike(opened(write_link(sheet)), sheet);
  };
  expect_kept([](LinkSheet&) {});
  expect_kept([](LinkSheet& sheet) { sheet.view = 4; });
  expect_kept([](LinkSheet& sheet) { sheet.system = 1; });
  expect_kept([](LinkSheet& sheet) { sheet.locks = 5; });
  expect_kept([](LinkSheet& sheet) {
    sheet.rounds = 1;
    sheet.stitches = 8;
  });
  expect_kept([](LinkSheet& sheet) {
    sheet.rounds = 2000;
    sheet.stitches = 400;
  });
  expect_kept([](LinkSheet& sheet) { sheet.words.title = "Strümpfe für alle"; });
  expect_kept([](LinkSheet& sheet) { sheet.words.note = "毛糸 and \xF0\x9F\xA7\xA6"; });
  expect_kept([](LinkSheet& sheet) {
    sheet.words.title = "a";
    sheet.words.note = "b";
  });
  expect_kept([](LinkSheet& sheet) { sheet.words.yarns = 1; });
  expect_kept([](LinkSheet& sheet) { sheet.words.yarns = kYarnChoices - 1; });
  expect_kept([](LinkSheet& sheet) { sheet.words = {"a", "b", 24}; });
}

// Older pages open what says no yarns, and its text is what it always was.
TEST(LinkSheet, OnlyWhatSaysYarnsIsOfVersion2) {
  LinkSheet sheet = fullest_sheet();
  for (const char* title : {"", "Tuesday socks"}) {
    sheet.words = {title, "", 0};
    const std::string before = write_link(sheet);
    EXPECT_EQ(before[0], '1');
    sheet.words.yarns = 8;
    const std::string with = write_link(sheet);
    EXPECT_EQ(with[0], '2');
    // The sheet itself is said by the same letters, but for the bit that words follow.
    EXPECT_EQ(plan_part(with).substr(kHeadLetters).size(),
              plan_part(before).substr(kHeadLetters).size());
  }
}

// Twelve readings and all: the words of a class stand outside of the promise, and its yarns with
// them.
TEST(LinkSheet, YarnsMakeTheFullestSheetNoLonger) {
  LinkSheet sheet = fullest_sheet();
  sheet.words.yarns = kYarnChoices - 1;
  const std::string link = write_link(sheet);
  std::cout << "the fullest, with yarns: " << plan_part(link).size() << " letters and "
            << link.size() - plan_part(link).size() << " of words\n";
  EXPECT_LE(plan_part(link).size(), static_cast<std::size_t>(kLinkMost));
  EXPECT_LE(link.size() - plan_part(link).size(), 8U);
  expect_alike(opened(link), sheet);
}

// What a class has in common has no swatch, foot, count or pace in it: with its yarns, the longest.
TEST(LinkSheet, AClasssLongestWithoutATitleIsWithinTheLimit) {
  LinkSheet sheet = fullest_sheet();
  for (std::size_t row = 0; row < link_rows_1().size(); ++row) {
    const std::string_view pointer = link_rows_1()[row].pointer;
    const bool is_own = pointer.starts_with("/swatch") || pointer.starts_with("/foot") ||
                        pointer.starts_with("/stitchCount") || pointer.starts_with("/pace") ||
                        pointer.starts_with("/yarn/substitute");
    const int items = link_rows_1()[row].group == LinkGroup::readings ? kLinkReadings : 1;
    for (int item = 0; is_own && item < items; ++item)
      sheet.codes[place_of(static_cast<int>(row), item)] = 0;
  }
  sheet.rounds = 0;
  sheet.stitches = 0;
  sheet.words.yarns = kYarnChoices - 1;
  const std::string link = write_link(sheet);
  std::cout << "a class's longest, yarns and all: " << link.size() << " letters\n";
  EXPECT_LE(link.size(), 80U);
  expect_alike(opened(link), sheet);
}

TEST(LinkSheet, EachFieldIsSaidAloneAtBothEndsOfEachUnit) {
  for (std::size_t row = 0; row < link_rows_1().size(); ++row) {
    const LinkRow& one = link_rows_1()[row];
    const int items = one.group == LinkGroup::readings ? kLinkReadings : 1;
    for (int item = 0; item < items; ++item) {
      for (int code = 0; code < value_count(one);
           code += code < 5 ? 1 : (value_count(one) - 6) / 3 + 1) {
        LinkSheet sheet = empty_sheet();
        sheet.rules = 1;
        sheet.codes[place_of(static_cast<int>(row), item)] = code;
        const std::string link = write_link(sheet);
        EXPECT_EQ(opened(link).codes, sheet.codes) << one.pointer << " " << code;
        // Readings before the one that is said take their room.
        EXPECT_LE(link.size(), 22U + 8U * static_cast<unsigned>(item)) << one.pointer;
      }
    }
  }
}

TEST(LinkSheet, AnOwnCountIsTheCountOfItsPlan) {
  const std::string link =
      link_in(answer("link", link_question({number_field("/stitchCount", 44)},
                                           R"("echo":{"stitchCount":40,"totalRounds":120})")));
  EXPECT_EQ(opened(link).stitches, 44);
  EXPECT_EQ(opened(link).rounds, 120);
}

// What adds up and yet was never written here.
TEST(LinkSheet, ANumberWithSomethingLeftOverIsRefused) {
  const std::string fullest = write_link(fullest_sheet());
  std::string body = fullest.substr(kHeadLetters);
  body[0] = 'z';
  const auto code_of = [](const LinkParts& parts) { return code_of_opening(seal_link(parts)); };
  EXPECT_EQ(code_of({1, fullest.substr(kHeadLetters), ""}), "");
  EXPECT_EQ(code_of({1, body, ""}), "link_damaged");
  EXPECT_EQ(code_of({1, std::string(kBodyMost, 'z'), ""}), "link_damaged");
  EXPECT_EQ(code_of({1, "", ""}), "link_damaged");
  EXPECT_EQ(code_of({1, fullest.substr(kHeadLetters), "abc"}), "link_damaged");
  // Odd: there are words; the least significant letter holds that bit.
  LinkSheet words = empty_sheet();
  words.rules = 1;
  words.words.note = "a";
  const std::string with = plan_part(write_link(words)).substr(kHeadLetters);
  EXPECT_EQ(code_of({1, with, ""}), "link_cut");
  EXPECT_EQ(code_of({1, with, "zz"}), "link_damaged");
  EXPECT_EQ(code_of({1, with, "0"}), "link_damaged");
  // Version 2 says yarns: without them there is no such link, and none of version 1 says any.
  const std::string note = write_words(1, {"", "a", 0});
  const std::string yarns = write_words(2, {"", "a", 5});
  EXPECT_EQ(code_of({1, with, note}), "");
  EXPECT_EQ(code_of({2, with, yarns}), "");
  EXPECT_EQ(code_of({2, with, note}), "link_damaged");
  EXPECT_EQ(code_of({1, with, yarns}), "link_damaged");
  EXPECT_EQ(code_of({2, with, ""}), "link_cut");
  EXPECT_EQ(code_of({2, fullest.substr(kHeadLetters), ""}), "link_damaged");
  // 256 choices and one more.
  EXPECT_EQ(code_of({2, with, letters_of_number({{0, 241}, {0, 1121}, {255, 256}})}), "");
  EXPECT_EQ(code_of({2, with, letters_of_number({{0, 241}, {0, 1121}, {256, 512}})}),
            "link_damaged");
}

}  // namespace
}  // namespace twinround

// Every cut, every changed character and every two neighbours that changed places are refused.
#include "link_seal.h"

#include <gtest/gtest.h>

#include <cstdint>
#include <string>
#include <vector>

#include "answer.h"
#include "link_number.h"
#include "link_sheets.h"

namespace twinround {
namespace {

const std::string kCharacters =
    "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_-. %+~";

// Links of every make: next to nothing, one reading, words of a class, all there is.
std::vector<std::string> some_links() {
  const auto made = [](const SheetFields& fields, const char* more) {
    return link_in(answer("link", link_question(fields, more)));
  };
  const SheetFields example = example_fields();
  return {made({}, ""),
          made(example, R"("echo":{"stitchCount":40,"totalRounds":120})"),
          made(example, R"("title":"Tuesday socks","note":"Bring two needles.","locks":["rib"])"),
          made({}, R"("note":"a")"),
          made({}, R"("yarns":[4])"),
          made(example, R"("title":"Tuesday socks","yarns":[3,4,5])"),
          write_link(fullest_sheet())};
}

TEST(LinkSeal, TheLinksTriedOpen) {
  for (const std::string& link : some_links()) {
    EXPECT_EQ(code_of_opening(link), "") << link;
    EXPECT_GE(link.size(), 8U) << link;
  }
}

TEST(LinkSeal, EveryChangedCharacterIsRefused) {
  int tried = 0;
  for (const std::string& link : some_links()) {
    for (std::size_t at = 0; at < link.size(); ++at) {
      for (const char c : kCharacters) {
        if (c == link[at]) continue;
        std::string changed = link;
        changed[at] = c;
        ++tried;
        ASSERT_NE(code_of_opening(changed), "") << link << " at " << at << ": " << c;
      }
    }
  }
  EXPECT_GT(tried, 20000);
}

TEST(LinkSeal, EveryCutIsRefused) {
  for (const std::string& link : some_links()) {
    for (std::size_t size = 0; size < link.size(); ++size) {
      const std::string code = code_of_opening(link.substr(0, size));
      // Where the words are missing whole, nothing but the check is left to say so.
      const bool is_bare = link[size] == '_';
      ASSERT_EQ(code, size == 0 ? "link_not_ours"
                      : is_bare ? "link_damaged"
                                : "link_cut")
          << link << " to " << size;
    }
    for (std::size_t at = 1; at < link.size(); ++at)
      ASSERT_NE(code_of_opening(link.substr(at)), "");
  }
}

TEST(LinkSeal, NeighboursThatChangedPlacesAreRefused) {
  for (const std::string& link : some_links()) {
    for (std::size_t at = 1; at < link.size(); ++at) {
      if (link[at] == link[at - 1]) continue;
      std::string changed = link;
      std::swap(changed[at], changed[at - 1]);
      ASSERT_NE(code_of_opening(changed), "") << link << " at " << at;
    }
  }
}

TEST(LinkSeal, ACharacterMoreOrLessIsRefused) {
  for (const std::string& link : some_links()) {
    for (std::size_t at = 0; at <= link.size(); ++at) {
      for (const char c : kCharacters) {
        ASSERT_NE(code_of_opening(link.substr(0, at) + c + link.substr(at)), "") << link << at << c;
      }
    }
    for (std::size_t at = 0; at < link.size(); ++at) {
      ASSERT_NE(code_of_opening(link.substr(0, at) + link.substr(at + 1)), "") << link << at;
    }
  }
}

// Two changes by u and v, k letters apart, cancel out where u g^k = -v: never, as far as a link
// goes.
TEST(LinkSeal, NoTwoChangedLettersBehindTheHeadCancelOut) {
  constexpr std::int64_t kPrime = (1 << 28) - 57;
  constexpr std::int64_t kLongest = kLinkMost + 3 + kWordsMost;
  // Letters count from 1, so the check of "00" is g + 1.
  const std::int64_t base = link_check(0, "00") - 1;
  std::int64_t raised = 1;
  for (std::int64_t apart = 1; apart <= kLongest; ++apart) {
    raised = raised * base % kPrime;
    std::int64_t change = 0;
    for (int by = 1; by <= kLetters; ++by) {
      change = (change + raised) % kPrime;
      ASSERT_GT(change, kLetters) << apart;
      ASSERT_LT(change, kPrime - kLetters) << apart;
    }
  }
}

TEST(LinkSeal, WhatIsNoLinkIsToldFromWhatIsDamaged) {
  const std::string link = some_links()[1];
  EXPECT_EQ(code_of_opening(""), "link_not_ours");
  for (const char* text :
       {"how", "f-foot-lengthMm", "?", " ", "0abc", "#1", "\xC3\xA4", "%20", "_"}) {
    EXPECT_EQ(code_of_opening(text), "link_not_ours") << text;
  }
  for (const char* newer : {"3", "9", "A", "Z", "3?!", "Zabc"})
    EXPECT_EQ(code_of_opening(newer), "link_newer") << newer;
  EXPECT_EQ(code_of_opening("3" + std::string(100000, 'x')), "link_newer");
  EXPECT_EQ(code_of_opening("1" + std::string(149, '0')), "link_damaged");
  EXPECT_EQ(code_of_opening("1" + std::string(150, '0')), "link_too_long");
  EXPECT_EQ(code_of_opening(link + "_" + std::string(kWordsMost + 2, '0')), "link_damaged");
  EXPECT_EQ(code_of_opening(link + "_" + std::string(kWordsMost + 3, '0')), "link_too_long");
  EXPECT_EQ(code_of_opening(link + "."), "link_damaged");
  EXPECT_EQ(code_of_opening(link + " "), "link_damaged");
  EXPECT_EQ(code_of_opening(link.substr(0, 20)), "link_cut");
  EXPECT_EQ(code_of_opening("1_"), "link_damaged");
  EXPECT_EQ(code_of_opening("2"), "link_cut");
  EXPECT_EQ(code_of_opening("2" + std::string(150, '0')), "link_too_long");
}

TEST(LinkSeal, SealsAndUnseals) {
  const std::string body(kBodyMost, 'z');
  const std::string words(kWordsMost, 'z');
  for (const LinkParts& parts :
       {LinkParts{1, "", ""}, LinkParts{1, "abc", ""}, LinkParts{1, "0", "xyz"},
        LinkParts{1, body, words}, LinkParts{2, body, words}}) {
    const std::string link = seal_link(parts);
    LinkParts back;
    ASSERT_EQ(unseal_link(link, back), LinkFault::none) << parts.body;
    EXPECT_EQ(back.version, parts.version);
    EXPECT_EQ(back.body, parts.body);
    EXPECT_EQ(back.words, parts.words);
  }
}

}  // namespace
}  // namespace twinround

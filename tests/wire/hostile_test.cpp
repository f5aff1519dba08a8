// Texts made to hurt: whatever comes, there is an answer, it is whole, and it is not much longer
// than what was asked.
#include <gtest/gtest.h>

#include <random>
#include <string>

#include "answer.h"
#include "request_text.h"
#include "worn_text.h"

namespace twinround {
namespace {

constexpr unsigned kSeed = 1918;

// A reply says yes with a plan or no with problems, and is one object from end to end.
void expect_whole(const std::string& reply, const std::string& text) {
  const bool answered = reply.starts_with(R"({"ok":true,"version":1,"rules":)");
  const bool refused = reply.starts_with(R"({"ok":false,"version":1,"rules":)");
  ASSERT_TRUE(answered || refused) << reply.substr(0, 200) << " for " << text.substr(0, 200);
  ASSERT_TRUE(reply.ends_with(answered ? "]}}" : "\"}]}")) << text.substr(0, 200);
  ASSERT_EQ(reply.find("null"), std::string::npos) << text.substr(0, 200);
  const auto depth_after = [&reply] {
    int depth = 0;
    bool in_string = false;
    for (std::size_t at = 0; at < reply.size(); ++at) {
      const char c = reply[at];
      if (in_string && c == '\\') {
        ++at;
      } else if (c == '"') {
        in_string = !in_string;
      } else if (!in_string && (c == '{' || c == '[')) {
        ++depth;
      } else if (!in_string && (c == '}' || c == ']')) {
        --depth;
      }
    }
    return in_string ? -1 : depth;
  };
  ASSERT_EQ(depth_after(), 0) << text.substr(0, 200);
}

void ask(const std::string& text) {
  expect_whole(answer("plan", text), text);
}

TEST(Hostile, EveryBeginningOfARequestIsRefused) {
  const std::string text = full_request().text();
  for (std::size_t length = 0; length < text.size(); ++length) {
    const std::string beginning = text.substr(0, length);
    const std::string reply = answer("plan", beginning);
    expect_whole(reply, beginning);
    EXPECT_NE(reply.find("bad_json"), std::string::npos) << beginning;
  }
  ask(text);
}

TEST(Hostile, EveryByteInEveryPlaceIsAnswered) {
  const std::string text = least_request().text();
  for (std::size_t at = 0; at < text.size(); ++at) {
    for (int byte = 0; byte < 256; ++byte) {
      std::string changed = text;
      changed[at] = static_cast<char>(byte);
      ask(changed);
    }
  }
}

TEST(Hostile, TextsWornByChanceAreAnswered) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  const std::string base = full_request().text();
  for (int round = 0; round < 4000; ++round) {
    ask(worn(base, random, 6));
  }
}

TEST(Hostile, ALongKeyComesBackOnceAndNoMore) {
  for (const std::string& key : {std::string(60000, 'k'), std::string(60000, '~'),
                                 std::string(30000, '~') + std::string(30000, '/')}) {
    const std::string text = "{\"" + key + "\":1}";
    const std::string reply = answer("plan", text);
    expect_whole(reply, text);
    EXPECT_LT(reply.size(), 2 * text.size() + 2000);
  }
  std::string escaped = "{\"";
  while (escaped.size() < 60000) escaped += "\\u0001";
  EXPECT_LT(answer("plan", escaped + "\":1}").size(), 62000U);
}

TEST(Hostile, ThousandsOfUnknownKeysAreAnsweredInProportion) {
  std::string text = "{\"version\":1";
  for (int i = 0; text.size() < 65000; ++i) text += ",\"\":" + std::to_string(i % 10);
  text += "}";
  const std::string reply = answer("plan", text);
  expect_whole(reply, text);
  EXPECT_LT(reply.size(), 20 * text.size());
}

TEST(Hostile, LongKeysBelowLongKeysStayLinear) {
  std::string text = "{\"" + std::string(20000, 'a') + "\":{\"" + std::string(20000, 'b') + "\":[";
  while (text.size() < 65000) text += "{\"c\":1},";
  text += "0]}}";
  const std::string reply = answer("plan", text);
  expect_whole(reply, text);
  EXPECT_LT(reply.size(), text.size());
  // Broken off deep inside, the pointer is as long as the keys and no longer.
  text.resize(text.size() - 1);
  EXPECT_LT(answer("plan", text).size(), 45000U);
}

TEST(Hostile, RepeatedKeysAreToldOnce) {
  std::string text = "{\"version\":1";
  while (text.size() < 65000) text += ",\"foot\":{}";
  text += "}";
  const std::string reply = answer("plan", text);
  expect_whole(reply, text);
  EXPECT_LT(reply.size(), 1500U);
}

TEST(Hostile, ALongWordDoesNotComeBack) {
  const std::string text =
      full_request().with("/rib/lean", "\"" + std::string(60000, 'x') + "\"").text();
  const std::string reply = answer("plan", text);
  expect_whole(reply, text);
  EXPECT_LT(reply.size(), 500U);
}

TEST(Hostile, OneTokenOfAllTheTextIsAnswered) {
  for (const char c :
       {'[', '{', '"', '\\', '-', '9', 'n', ' ', ',', ':', '0', '.', '/', '\0', '\xC3'}) {
    ask(std::string(65536, c));
    ask("{\"cuffMm\":" + std::string(65000, c));
  }
  ask("{\"cuffMm\":0." + std::string(65000, '3') + "}");
  ask("{\"cuffMm\":1e" + std::string(65000, '0') + "1}");
}

}  // namespace
}  // namespace twinround

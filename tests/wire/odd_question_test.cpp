// The question `odd` at the core's door.
#include "odd_question.h"

#include <gtest/gtest.h>

#include <random>
#include <set>
#include <string>
#include <vector>

#include "answer.h"
#include "caution_codes.h"
#include "course_example.h"
#include "odd.h"
#include "random_request.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

constexpr unsigned kSeed = 1961;

const RequestText kPlain =
    full_request().without("/stitchCount").without("/swatch/massG").without("/swatch/massStitches");

std::string odd(const RequestText& request) {
  return answer("odd", request.text());
}

TEST(OddQuestion, AnswersInTheEnvelopeTheMostHarmfulFirst) {
  const std::string reply = odd(
      kPlain.with("/stitchCount", "32").with("/swatch/washed", "false").with("/inHand/g", "20"));
  EXPECT_TRUE(reply.starts_with(
      R"({"ok":true,"version":1,"rules":2,"odd":{"oddities":[{"harm":"body","field":)"))
      << reply;
  EXPECT_LT(reply.find("\"harm\":\"body\""), reply.find("\"harm\":\"supply\""));
  EXPECT_LT(reply.find("\"harm\":\"supply\""), reply.find("\"harm\":\"doubt\""));
  // 20 g of 200 m in 100 g.
  EXPECT_TRUE(says_part(reply, R"("code":"yarn_short","haveM":40,)")) << reply;
}

TEST(OddQuestion, IsRefusedAsAPlanIs) {
  EXPECT_EQ(faults_in(odd(kPlain.without("/foot"))), Faults{"/foot required"});
  EXPECT_EQ(faults_in(odd(kPlain.with("/legHeightMm", "60"))),
            Faults{"/legHeightMm leg_too_short"});
  EXPECT_EQ(faults_in(odd(kPlain.with("/inHand/hanks", "1"))),
            Faults{"/inHand/hanks unknown_field"});
}

TEST(OddQuestion, HoldsBothSidesOfEveryLimit) {
  for (const char* good : {"0", "100"}) {
    EXPECT_TRUE(odd(kPlain.with("/inHand/balls", good)).starts_with("{\"ok\":true")) << good;
  }
  for (const char* bad : {"-0.1", "100.1"}) {
    EXPECT_EQ(faults_in(odd(kPlain.with("/inHand/balls", bad))),
              Faults{"/inHand/balls out_of_range"});
  }
  EXPECT_TRUE(odd(kPlain.with("/inHand/g", "5000")).starts_with("{\"ok\":true"));
  for (const char* bad : {"-0.1", "5000.1"}) {
    EXPECT_EQ(faults_in(odd(kPlain.with("/inHand/g", bad))), Faults{"/inHand/g out_of_range"});
  }
}

TEST(OddQuestion, EveryHarmHasItsWord) {
  EXPECT_EQ(kHarmWords[static_cast<int>(Harm::body)], "body");
  EXPECT_EQ(kHarmWords[static_cast<int>(Harm::supply)], "supply");
  EXPECT_EQ(kHarmWords[static_cast<int>(Harm::sock)], "sock");
  EXPECT_EQ(kHarmWords[static_cast<int>(Harm::doubt)], "doubt");
}

// Every code it tells is listed, and every one it lists besides the cautions is told by one of
// these.
TEST(OddQuestion, TellsTheCodesThatAreListed) {
  SCOPED_TRACE(kSeed);
  std::set<std::string> told;
  const auto hear = [&](const RequestText& request) {
    for (const std::string& fault : faults_in(odd(request))) {
      told.insert(fault.substr(fault.find(' ') + 1));
    }
  };
  const RequestText plain = kPlain.without("/swatch/stretchedWidthMm");
  hear(plain.with("/foot/ankleGirthMm", "300").with("/foot/calfGirthMm", "300"));
  hear(plain.with("/inHand/balls", "0.5"));
  hear(plain.with("/inHand/balls", "1"));
  hear(plain.without("/yarn/ballG").without("/yarn/ballM").with("/inHand/balls", "1"));
  hear(plain.with("/swatch/readings/0/stitches", "23"));
  hear(plain.with("/swatch/readings/0/stitches", "14"));
  hear(plain.with("/swatch/readings/1/stitches", "23").with("/swatch/readings/1/widthMm", "101.6"));
  for (const std::string_view code : kOddCodes) {
    EXPECT_TRUE(told.contains(std::string(code))) << code;
  }
  std::mt19937 random(kSeed);
  told.clear();
  for (int i = 0; i < 1000; ++i) {
    const std::string reply = odd(likely_request(random));
    if (reply.starts_with("{\"ok\":false")) continue;
    for (const std::string& fault : faults_in(reply)) {
      told.insert(fault.substr(fault.find(' ') + 1));
    }
  }
  std::set<std::string> listed(std::begin(kCautionCodes), std::end(kCautionCodes));
  listed.insert(std::begin(kOddCodes), std::end(kOddCodes));
  for (const std::string& code : told) EXPECT_TRUE(listed.contains(code)) << code;
}

}  // namespace
}  // namespace twinround

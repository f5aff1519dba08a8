#include "answer.h"

#include <gtest/gtest.h>

#include <random>
#include <string>

#include "random_request.h"
#include "request_text.h"

namespace twinround {
namespace {

constexpr unsigned kSeed = 4082;

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

TEST(Answer, KnowsItsQuestionsAndNoOther) {
  const std::string known =
      "plan | adjust | place | found | stripes | supply | weeks | roster | odd | drive | link";
  for (const char* question : {"", "plans", "Plan", "links", "schema"}) {
    const std::string reply = answer(question, full_request().text());
    EXPECT_EQ(reply, R"({"ok":false,"version":1,"rules":2,"problems":[{"field":"",)"
                     R"("code":"unknown_question","allowed":")" +
                         known + R"(","message":"The questions answered are )" + known +
                         R"(."}]})");
  }
}

TEST(Answer, OpensWithTheEnvelope) {
  EXPECT_TRUE(answer("plan", full_request().text())
                  .starts_with(R"({"ok":true,"version":1,"rules":2,"plan":{"gauge":{)"));
  EXPECT_TRUE(
      answer("plan", "{}")
          .starts_with(
              R"({"ok":false,"version":1,"rules":2,"problems":[{"field":"/version","code":"required",)"));
}

TEST(Answer, IsTheSameEveryTime) {
  EXPECT_EQ(answer("plan", full_request().text()), answer("plan", full_request().text()));
}

TEST(Answer, TellsAProblemWithItsNumbersAndWordsBesideTheCode) {
  EXPECT_TRUE(has(answer("plan", full_request().with("/swatch/readings/0/widthMm", "9").text()),
                  R"([{"field":"/swatch/readings/0/widthMm","code":"out_of_range","min":10,)"
                  R"("max":500,"message":"Width over which the stitches were counted: )"
                  R"(give 10 to 500 mm."}])"));
  EXPECT_TRUE(has(answer("plan", full_request().without("/yarn/ballM").text()),
                  R"([{"field":"/yarn/ballG","code":"needs_partner","partner":"/yarn/ballM",)"));
}

// The two kinds of refusal, of form and of the sock itself, look alike.
TEST(Answer, TellsWhatOnlyTheComputationFindsTheSameWay) {
  const std::string reply = answer("plan", full_request().with("/legHeightMm", "40").text());
  EXPECT_TRUE(
      has(reply, R"("problems":[{"field":"/legHeightMm","code":"leg_too_short","leastMm":)"));
}

TEST(Answer, TellsOfAPlanWhatExistsAndNothingElse) {
  const std::string least = answer("plan", least_request().text());
  for (const char* absent :
       {"geometryMmPerStitch", "\"balls\"", "ballsJust", "spareM", "SpreadMm"}) {
    EXPECT_FALSE(has(least, absent)) << absent;
  }
  EXPECT_TRUE(has(least, R"("massGuessed":true)"));
  const std::string full = answer("plan", full_request().text());
  for (const char* present : {"geometryMmPerStitch", "\"balls\":2", "ballsJust", "spareM"}) {
    EXPECT_TRUE(has(full, present)) << present;
  }
  EXPECT_FALSE(has(full, "massGuessed"));
  const std::string shoe = answer("plan", shoe_request().text());
  EXPECT_TRUE(has(shoe, "lengthSpreadMm"));
  EXPECT_TRUE(has(shoe, R"("ballGirthEstimated":true,"ballGirthSpreadMm":)"));
  // 3.5 mm has a US name and no UK one; 2.5 mm has neither.
  const auto needle = [](const char* mm) {
    return answer("plan", full_request().with("/swatch/needleMm", mm).text());
  };
  EXPECT_TRUE(has(needle("3.5"), R"("needle":{"mm":3.5,"us":"4","cableMinMm":)"));
  EXPECT_TRUE(has(needle("2.5"), R"("needle":{"mm":2.5,"cableMinMm":)"));
}

TEST(Answer, NamesTheSecondSocksLineOnlyWhereItDiffers) {
  EXPECT_FALSE(has(answer("plan", full_request().text()), "secondLine"));
  EXPECT_TRUE(
      has(answer("plan", full_request().with("/rib/lean", "\"mirrored\"").text()), "secondLine"));
}

// Whatever the ranges allow comes to figures that JSON can say, or is refused for a reason.
TEST(Answer, NoFigureIsEverTooLargeToTell) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  int answered = 0;
  for (int i = 0; i < 6000; ++i) {
    const RequestText request = i % 2 == 0 ? wild_request(random) : likely_request(random);
    const std::string reply = answer("plan", request.text());
    ASSERT_FALSE(has(reply, R"("field":"","code":)")) << request.text() << reply;
    ASSERT_FALSE(has(reply, "nan")) << request.text();
    ASSERT_FALSE(has(reply, "inf,")) << request.text();
    if (reply.starts_with(R"({"ok":true)")) ++answered;
  }
  EXPECT_GT(answered, 2000);
}

}  // namespace
}  // namespace twinround

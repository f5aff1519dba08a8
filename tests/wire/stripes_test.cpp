// The question `stripes` at the core's door.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "answer.h"
#include "request_text.h"
#include "stripes_reader.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

// Ten rounds of 10 stitches of 10 mm: 1.8 m a sock from tail to tail.
RequestText ten_rounds() {
  return {{"/version", "1"},
          {"/sock/rounds/0/section", "\"toe\""},
          {"/sock/rounds/0/rounds", "2"},
          {"/sock/rounds/0/stitches", "10"},
          {"/sock/rounds/1/section", "\"cuff\""},
          {"/sock/rounds/1/rounds", "8"},
          {"/sock/rounds/1/stitches", "10"},
          {"/sock/mmPerStitch", "10"},
          {"/sock/castOnM", "0.1"},
          {"/sock/bindOffM", "0.3"},
          {"/sock/tailsM", "0.4"},
          {"/tex", "200"}};
}

RequestText two_colours() {
  return ten_rounds()
      .with("/repeat/stripes/0/colour", "1")
      .with("/repeat/stripes/0/m", "0.5")
      .with("/repeat/stripes/1/colour", "2")
      .with("/repeat/stripes/1/m", "0.5");
}

RequestText two_lots() {
  return ten_rounds().with("/leftovers/lots/0/m", "2").with("/leftovers/lots/1/g", "20");
}

Faults faults_of(const RequestText& request) {
  Faults found;
  for (const Problem& problem : read_stripes_request(request.text()).problems()) {
    found.push_back(problem.field + " " + problem.code);
  }
  return found;
}

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

TEST(StripesQuestion, AnswersInTheEnvelope) {
  const std::string reply = answer("stripes", two_colours().with("/repeat/startBM", "0.5").text());
  EXPECT_TRUE(reply.starts_with(
      R"({"ok":true,"version":1,"rules":2,"stripes":{"repeat":{"from":"two-balls","repeatM":1,)"))
      << reply;
  // Half a metre lies at the end of round 2, for 0.3 m come before the first.
  EXPECT_TRUE(has(reply, R"("bandsA":[{"colour":1,"m":0.5,"fromRound":1,"fromShare":0,)"
                         R"("fromHalf":1,"toRound":3,"toShare":0},)"))
      << reply;
  EXPECT_TRUE(has(reply, R"("canMatch":true,"pullOffB":{"m":0.5,"g":0.1})")) << reply;
}

TEST(StripesQuestion, AnswersOnlyWhatWasAsked) {
  const std::string reply = answer("stripes", two_lots().text());
  EXPECT_TRUE(has(reply, R"("stripes":{"leftovers":{"reaches":true,"keepsMargin":true,)")) << reply;
  EXPECT_FALSE(has(reply, "\"repeat\"")) << reply;
  EXPECT_FALSE(has(reply, "\"legHeightMm\"")) << reply;
}

TEST(StripesQuestion, LowersTheLegByTheRoundsThatAreShort) {
  // 1.6 m a sock without margin: two of ten rounds are missing, 5 mm each.
  const std::string reply = answer("stripes", ten_rounds()
                                                  .with("/margin", "0")
                                                  .with("/leftovers/lots/0/m", "3.2")
                                                  .with("/leftovers/legHeightMm", "100")
                                                  .with("/leftovers/roundsPerMm", "0.2")
                                                  .text());
  EXPECT_TRUE(has(reply, R"("reaches":false,"keepsMargin":false,"rounds":8,)")) << reply;
  EXPECT_TRUE(has(reply, R"("legHeightMm":90,)")) << reply;
}

TEST(StripesQuestion, ReadsALotHoweverItIsTold) {
  const struct {
    const char* g;
    const char* m;
    const char* per_100g;
    double metres;
    double tex;  // 0: not told
  } rows[] = {{"", "40", "", 40, 0},
              {"20", "", "", 100, 0},  // as thick as the sock's yarn: 200 g a kilometre
              {"20", "", "400", 80, 250},
              {"20", "40", "", 40, 500},
              {"20", "40", "400", 40, 500}};
  for (const auto& row : rows) {
    RequestText text = ten_rounds();
    if (*row.g) text = text.with("/leftovers/lots/0/g", row.g);
    if (*row.m) text = text.with("/leftovers/lots/0/m", row.m);
    if (*row.per_100g) text = text.with("/leftovers/lots/0/mPer100G", row.per_100g);
    const auto read = read_stripes_request(text.text());
    ASSERT_TRUE(read.ok());
    EXPECT_NEAR(read.value().leftovers->input.lots[0].m(), row.metres, 1e-9);
    EXPECT_NEAR(read.value().leftovers->tex[0].value_or(0), row.tex, 1e-9);
  }
}

TEST(StripesQuestion, SaysWhereALotIsOfAnotherThickness) {
  // The sock's yarn weighs 200 g a kilometre; a tenth more is still the same.
  const struct {
    const char* per_100g;
    bool is_other;
  } rows[] = {{"500", false}, {"454.546", false}, {"454.5", true}, {"555.5", false}, {"556", true}};
  for (const auto& row : rows) {
    const std::string reply =
        answer("stripes", ten_rounds()
                              .with("/leftovers/lots/0/g", "20")
                              .with("/leftovers/lots/0/mPer100G", row.per_100g)
                              .text());
    EXPECT_TRUE(
        has(reply, std::string("\"isOtherThickness\":") + (row.is_other ? "true" : "false")))
        << reply;
  }
}

TEST(StripesQuestion, TellsWhatIsMissingOrHalf) {
  EXPECT_EQ(faults_of(ten_rounds()), Faults{"/repeat required"});
  EXPECT_EQ(faults_of(two_colours()), Faults{});
  EXPECT_EQ(faults_of(two_colours().without("/tex")), Faults{"/tex required"});
  EXPECT_EQ(faults_of(two_colours().without("/sock")), Faults{"/sock required"});
  EXPECT_EQ(faults_of(two_colours().without("/sock/rounds")), Faults{"/sock/rounds required"});
  EXPECT_EQ(faults_of(two_colours().with("/repeat/from", "\"two-balls\"")), Faults{});
  for (const char* from : {"\"two-ends\"", "\"halves\""}) {
    const RequestText one_ball = two_colours().with("/repeat/from", from);
    EXPECT_EQ(faults_of(one_ball), Faults{"/repeat/ballM required"});
    EXPECT_EQ(faults_of(one_ball.with("/repeat/ballM", "50")), Faults{});
  }
  EXPECT_EQ(faults_of(ten_rounds().with("/leftovers/lots/0/mPer100G", "200")),
            Faults{"/leftovers/lots/0/mPer100G needs_partner"});
  EXPECT_EQ(faults_of(two_lots().with("/leftovers/lots/2", "{}")),
            Faults{"/leftovers/lots/2/g required"});
  EXPECT_EQ(faults_of(two_lots().with("/leftovers/legHeightMm", "100")),
            Faults{"/leftovers/legHeightMm needs_partner"});
  EXPECT_EQ(faults_of(two_colours().with("/repeat/colour", "1")),
            Faults{"/repeat/colour unknown_field"});
}

TEST(StripesQuestion, HoldsBothSidesOfEveryLimit) {
  const struct {
    const char* pointer;
    const char* last_good;
    const char* first_bad;
  } rows[] = {
      {"/tex", "1", "0.99"},
      {"/tex", "100000", "100001"},
      {"/margin", "0", "-0.01"},
      {"/margin", "1", "1.01"},
      {"/sock/rounds/0/rounds", "1", "0"},
      {"/sock/rounds/0/stitches", "1", "0"},
      {"/sock/rounds/0/stitches", "2000", "2001"},
      {"/sock/mmPerStitch", "0.1", "0.09"},
      {"/sock/mmPerStitch", "1000", "1001"},
      {"/sock/castOnM", "0", "-0.1"},
      {"/sock/bindOffM", "100", "100.1"},
      {"/sock/tailsM", "100", "100.1"},
      {"/repeat/startAM", "0", "-0.1"},
      {"/repeat/startBM", "24000", "24001"},
      {"/repeat/ballM", "5", "4.9"},
      {"/repeat/ballM", "5000", "5001"},
      {"/repeat/stripes/0/colour", "24", "25"},
      {"/repeat/stripes/0/m", "0.1", "0.09"},
      {"/repeat/stripes/0/m", "1000", "1001"},
      {"/leftovers/lots/0/m", "0.5", "0.4"},
      {"/leftovers/lots/0/m", "20000", "20001"},
      {"/leftovers/lots/1/g", "0.5", "0.4"},
      {"/leftovers/lots/1/g", "2000", "2001"},
      {"/leftovers/lots/1/mPer100G", "5", "4"},
      {"/leftovers/lots/1/mPer100G", "5000", "5001"},
      {"/own/stripes/0/rounds", "1", "0"},
      {"/own/stripes/0/rounds", "2000", "2001"},
      {"/own/stripes/0/colour", "1", "0"},
  };
  const RequestText all = two_colours()
                              .with("/own/stripes/0/colour", "1")
                              .with("/own/stripes/0/rounds", "3")
                              .with("/leftovers/lots/0/m", "2")
                              .with("/leftovers/lots/1/g", "20");
  for (const auto& row : rows) {
    EXPECT_EQ(faults_of(all.with(row.pointer, row.last_good)), Faults{}) << row.pointer;
    EXPECT_EQ(faults_of(all.with(row.pointer, row.first_bad)),
              Faults{std::string(row.pointer) + " out_of_range"});
  }
}

TEST(StripesQuestion, HoldsTheLengthOfItsLists) {
  RequestText colours = ten_rounds();
  RequestText lots = ten_rounds();
  for (int i = 0; i < 24; ++i) {
    const std::string at = "/repeat/stripes/" + std::to_string(i);
    colours = colours.with(at + "/colour", std::to_string(i + 1)).with(at + "/m", "1");
    if (i < 12) lots = lots.with("/leftovers/lots/" + std::to_string(i) + "/m", "1");
  }
  EXPECT_EQ(faults_of(colours), Faults{});
  EXPECT_EQ(faults_of(lots), Faults{});
  EXPECT_EQ(faults_of(colours.with("/repeat/stripes/24/colour", "1")),
            Faults{"/repeat/stripes too_many_items"});
  EXPECT_EQ(faults_of(lots.with("/leftovers/lots/12/m", "1")),
            Faults{"/leftovers/lots too_many_items"});
}

TEST(StripesQuestion, KnowsNoSockOfMoreThanTwoThousandRounds) {
  EXPECT_EQ(faults_of(two_colours().with("/sock/rounds/0/rounds", "1992")), Faults{});
  EXPECT_EQ(faults_of(two_colours().with("/sock/rounds/0/rounds", "1993")),
            Faults{"/sock/rounds too_many_rounds"});
}

TEST(StripesQuestion, RefusesStripesThatAreNone) {
  // 2000 rounds of 400 stitches of 1 m.
  const std::string reply = answer("stripes", two_colours()
                                                  .with("/sock/rounds/0/rounds", "1992")
                                                  .with("/sock/rounds/0/stitches", "400")
                                                  .with("/sock/mmPerStitch", "1000")
                                                  .text());
  EXPECT_TRUE(has(reply, R"("field":"/repeat/stripes","code":"too_many_bands")")) << reply;
}

}  // namespace
}  // namespace twinround

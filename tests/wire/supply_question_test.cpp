// The question `supply` at the core's door.
#include "supply_question.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "answer.h"
#include "course_example.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

const RequestText kClass = full_request().without("/foot").without("/version");
const RequestText kWorsted = {{"/yarn/category", "4"}};
const RequestText kFingering = {
    {"/yarn/category", "1"}, {"/yarn/ballG", "50"}, {"/yarn/ballM", "210"}};
const RequestText kShoe = {
    {"/foot/shoe/scale", "\"eu\""}, {"/foot/shoe/size", "39"}, {"/foot/body", "\"woman\""}};
const RequestText kMeasured = {{"/foot/lengthMm", "262"}, {"/foot/ballGirthMm", "245"}};
const RequestText kLow = kMeasured.with("/legHeightMm", "60");

std::string asked(const std::vector<RequestText>& rows, const std::vector<RequestText>& columns,
                  const RequestText& common = kClass) {
  return course(common, member("rows", list_of(rows)) + member("columns", list_of(columns)));
}

std::string supply(const std::vector<RequestText>& rows, const std::vector<RequestText>& columns) {
  return answer("supply", asked(rows, columns));
}

TEST(SupplyQuestion, AnswersRowByRowInTheEnvelope) {
  const std::string reply = supply({kWorsted, kFingering}, {kShoe, kMeasured, kLow});
  EXPECT_TRUE(reply.starts_with(
      R"({"ok":true,"version":1,"rules":2,"supply":{"cells":[{"row":0,"column":0,"line":{)"))
      << reply;
  EXPECT_EQ(times(reply, "\"row\":"), 6);
  EXPECT_LT(reply.find(R"("row":0,"column":2)"), reply.find(R"("row":1,"column":0)"));
}

TEST(SupplyQuestion, ACellIsThePlanOfWhatItSaysToChange) {
  // The class's request less swatch, yarn, foot and count, with what the cell says.
  const std::string reply = supply({kFingering}, {kShoe});
  EXPECT_TRUE(says_part(reply, R"("clear":["/swatch","/yarn","/stitchCount"],"change":{)"
                               R"("/yarn/category":1,"/yarn/ballG":50,"/yarn/ballM":210,)"
                               R"("/foot/shoe/scale":"eu","/foot/shoe/size":39,)"
                               R"("/foot/body":"woman"}})"))
      << reply;
  RequestText plan = kClass.without("/swatch").without("/yarn").without("/stitchCount");
  plan = plan.with("/version", "1")
             .with("/yarn/category", "1")
             .with("/yarn/ballG", "50")
             .with("/yarn/ballM", "210")
             .with("/foot/shoe/scale", "\"eu\"")
             .with("/foot/shoe/size", "39")
             .with("/foot/body", "\"woman\"");
  const std::string single = answer("plan", plan.text());
  EXPECT_EQ(number_after(reply, "stitchCount"), number_after(single, "stitchCount"));
  const std::size_t behind_choices = single.find("\"ribsThatFit\"");
  for (const char* figure : {"totalRounds", "mPerPair", "mWithMargin", "gPerSock", "minutes"}) {
    SCOPED_TRACE(figure);
    EXPECT_EQ(number_after(reply, figure), number_after(single, figure, behind_choices));
  }
  EXPECT_EQ(number_after(reply, "count"), number_after(single, "balls"));
}

TEST(SupplyQuestion, ACellWithoutAPlanSaysWhyAndTheOthersStand) {
  const std::string reply = supply({kWorsted}, {kLow, kMeasured});
  EXPECT_EQ(faults_in(reply), Faults{"/legHeightMm leg_too_short"});
  EXPECT_EQ(times(reply, "\"line\":"), 1);
  // A size without a foot: nothing to plan with.
  EXPECT_EQ(faults_in(supply({kWorsted}, {{{"/cuffMm", "20"}}})), Faults{"/foot required"});
}

TEST(SupplyQuestion, ARowWithASwatchOfItsOwnGoesByThat) {
  const RequestText swatched = kWorsted.with("/swatch/readings/0/stitches", "18")
                                   .with("/swatch/readings/0/widthMm", "101.6")
                                   .with("/swatch/readings/0/rounds", "26")
                                   .with("/swatch/readings/0/heightMm", "101.6");
  // 245 x 0.9 x 18/101.6 = 39.07.
  EXPECT_EQ(number_after(supply({swatched}, {kMeasured}), "stitchCount"), 40);
}

TEST(SupplyQuestion, TellsWhereAPartIsWrong) {
  EXPECT_EQ(faults_in(supply({kWorsted, {{"/yarn/category", "8"}}}, {kShoe, {{"/hat", "1"}}})),
            (Faults{"/rows/1/yarn/category out_of_range", "/columns/1/hat unknown_field"}));
  EXPECT_EQ(faults_in(answer("supply", asked({kWorsted}, {kShoe}, kClass.with("/cuffMm", "301")))),
            Faults{"/class/cuffMm out_of_range"});
  EXPECT_EQ(faults_in(answer("supply", R"({"version":1,"class":{}})")),
            (Faults{"/rows required", "/columns required"}));
  EXPECT_EQ(faults_in(answer("supply", R"({"version":1,"class":[],"rows":[7],"columns":{}})")),
            (Faults{"/class wrong_type", "/rows/0 wrong_type", "/columns wrong_type"}));
}

TEST(SupplyQuestion, HoldsBothSidesOfEveryLimit) {
  const std::vector<RequestText> twelve(12, kMeasured);
  EXPECT_EQ(times(supply(std::vector<RequestText>(12, kWorsted), twelve), "\"line\":"), 144);
  EXPECT_EQ(faults_in(supply({kWorsted}, std::vector<RequestText>(13, kMeasured))),
            Faults{"/columns too_many_items"});
  EXPECT_EQ(faults_in(supply(std::vector<RequestText>(13, kWorsted), {kMeasured})),
            Faults{"/rows too_many_items"});
  EXPECT_EQ(faults_in(supply({}, {kMeasured})), Faults{"/rows required"});
}

}  // namespace
}  // namespace twinround

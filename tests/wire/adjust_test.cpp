// The question `adjust` at the core's door.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "adjust_fields.h"
#include "adjust_reader.h"
#include "answer.h"
#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

// The contract's example, and a toe of 14 rounds like its swatch.
RequestText toe_like_the_swatch() {
  return full_request()
      .with("/needles/roundsDone", "14")
      .with("/needles/stitches", "20")
      .with("/needles/widthMm", "101.6")
      .with("/needles/rounds", "14")
      .with("/needles/lengthMm", "50.8");
}

Faults faults_of(const RequestText& request) {
  Faults found;
  for (const Problem& problem : read_adjust_request(request.text()).problems()) {
    found.push_back(problem.field + " " + problem.code);
  }
  return found;
}

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

TEST(AdjustQuestion, AnswersInTheEnvelope) {
  const std::string reply = answer("adjust", toe_like_the_swatch().text());
  EXPECT_TRUE(reply.starts_with(R"({"ok":true,"version":1,"rules":2,"adjust":{"gauge":{)"))
      << reply;
  EXPECT_TRUE(has(reply, R"("advised":"keep","ways":[{"way":"keep",)")) << reply;
  EXPECT_TRUE(reply.ends_with(R"("yarnLeft":[]}})")) << reply;
}

TEST(AdjustQuestion, IsAskedWithThePlansOwnRequest) {
  const auto plan = read_adjust_request(toe_like_the_swatch().text());
  ASSERT_TRUE(plan.ok());
  EXPECT_EQ(plan.value().request.plan.swatch.readings.size(), 1u);
  EXPECT_EQ(plan.value().request.rounds_done, 14);
  EXPECT_DOUBLE_EQ(plan.value().request.toe.width.mm(), 101.6);
  EXPECT_FALSE(plan.value().left_a);
}

TEST(AdjustQuestion, TellsWhatIsMissingOrHalf) {
  EXPECT_EQ(faults_of(full_request()), Faults{"/needles required"});
  EXPECT_EQ(faults_of(toe_like_the_swatch().without("/needles/roundsDone")),
            Faults{"/needles/roundsDone required"});
  EXPECT_EQ(faults_of(toe_like_the_swatch().without("/needles/lengthMm")),
            Faults{"/needles/rounds needs_partner"});
  EXPECT_EQ(
      faults_of(toe_like_the_swatch().without("/needles/rounds").without("/needles/lengthMm")),
      Faults{});
  EXPECT_EQ(faults_of(toe_like_the_swatch().with("/needles/colour", "1")),
            Faults{"/needles/colour unknown_field"});
  // What is wrong with the plan is told as well.
  EXPECT_EQ(faults_of(toe_like_the_swatch().without("/legHeightMm")),
            Faults{"/legHeightMm required"});
}

struct Limit {
  const char* pointer = "";
  const char* last_good = "";
  const char* first_bad = "";
};

TEST(AdjustQuestion, HoldsBothSidesOfEveryLimit) {
  const std::vector<Limit> limits = {
      {"/needles/roundsDone", "0", "-1"},    {"/needles/roundsDone", "2000", "2001"},
      {"/needles/stitches", "1", "0.99"},    {"/needles/stitches", "400", "400.01"},
      {"/needles/widthMm", "10", "9.99"},    {"/needles/widthMm", "500", "500.01"},
      {"/needles/rounds", "1", "0.99"},      {"/needles/rounds", "600", "600.01"},
      {"/needles/lengthMm", "10", "9.99"},   {"/needles/lengthMm", "500", "500.01"},
      {"/needles/gramsLeftA", "0", "-0.01"}, {"/needles/gramsLeftA", "2000", "2000.01"},
      {"/needles/gramsLeftB", "0", "-0.01"}, {"/needles/gramsLeftB", "2000", "2000.01"},
  };
  for (const Limit& limit : limits) {
    EXPECT_EQ(faults_of(toe_like_the_swatch().with(limit.pointer, limit.last_good)), Faults{});
    EXPECT_EQ(faults_of(toe_like_the_swatch().with(limit.pointer, limit.first_bad)),
              Faults{std::string(limit.pointer) + " out_of_range"});
  }
  EXPECT_EQ(faults_of(toe_like_the_swatch().with("/needles/roundsDone", "14.5")),
            Faults{"/needles/roundsDone not_whole"});
}

TEST(AdjustQuestion, WeighsTheYarnThatIsLeft) {
  const std::string reply = answer("adjust", toe_like_the_swatch()
                                                 .with("/needles/gramsLeftA", "45")
                                                 .with("/needles/gramsLeftB", "0")
                                                 .text());
  // 100 g measure 200 m: 45 g are 90 m.
  EXPECT_TRUE(has(reply, R"("yarnLeft":[{"sock":"a","m":90,)")) << reply;
  EXPECT_TRUE(has(reply, R"({"sock":"b","m":0,)")) << reply;
}

TEST(AdjustQuestion, IsRefusedPastTheEndOfThePlan) {
  const std::string reply =
      answer("adjust", toe_like_the_swatch().with("/needles/roundsDone", "1999").text());
  EXPECT_TRUE(has(reply, R"("field":"/needles/roundsDone","code":"past_the_plan")")) << reply;
}

}  // namespace
}  // namespace twinround

// The question `drive` at the core's door.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "answer.h"
#include "drive_fields.h"
#include "drive_reader.h"
#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

// The contract's swatch and yarn, and forty pairs for women and children.
RequestText forty_pairs() {
  RequestText request = full_request();
  for (const char* of_one_foot :
       {"/foot", "/girthEase", "/stitchCount", "/yarn/substitute", "/legHeightMm"}) {
    request = request.without(of_one_foot);
  }
  return request.with("/drive/pairs", "40")
      .with("/drive/groups/0/who", "\"woman\"")
      .with("/drive/groups/1/who", "\"child\"")
      .with("/drive/groups/1/ageYears", "9")
      .with("/drive/groups/1/share", "0.5");
}

RequestText with_a_lot() {
  return forty_pairs().with("/drive/lots/0/g", "500").with("/drive/lots/0/m", "1000");
}

Faults faults_of(const RequestText& request) {
  Faults found;
  for (const Problem& problem : read_drive_request(request.text()).problems()) {
    found.push_back(problem.field + " " + problem.code);
  }
  return found;
}

DriveRequest asked(const RequestText& request) {
  const Result<DriveRequest> read = read_drive_request(request.text());
  EXPECT_TRUE(read.ok());
  return read.ok() ? read.value() : DriveRequest{};
}

bool has(const std::string& reply, const std::string& part) {
  return reply.find(part) != std::string::npos;
}

TEST(DriveQuestion, AnswersInTheEnvelope) {
  const std::string reply = answer("drive", with_a_lot().text());
  EXPECT_TRUE(reply.starts_with(
      R"({"ok":true,"version":1,"rules":2,"drive":{"wantedShare":0.9,"legOfFoot":0.8,"share":)"))
      << reply;
  EXPECT_TRUE(has(reply, R"("shareError":0.005,)"));
  EXPECT_TRUE(has(reply, R"("band":{"footFromMm":)"));
  EXPECT_TRUE(has(reply, R"("atHand":{"pairs":)"));
  EXPECT_TRUE(has(reply, R"("code":"feet_of_soldiers")"));
  EXPECT_FALSE(has(answer("drive", forty_pairs().text()), "atHand"));
}

TEST(DriveQuestion, IsAskedWithThePlansOwnYarnAndRib) {
  const DriveRequest request = asked(with_a_lot());
  EXPECT_EQ(request.plan.swatch.readings.size(), 1u);
  EXPECT_EQ(request.pairs, 40);
  ASSERT_EQ(request.groups.size(), 2u);
  EXPECT_EQ(request.groups[0].body, Body::woman);
  EXPECT_DOUBLE_EQ(request.groups[0].share, 1);
  EXPECT_EQ(request.groups[1].body, Body::child);
  EXPECT_EQ(request.groups[1].age_years, 9);
  EXPECT_DOUBLE_EQ(request.groups[1].share, 0.5);
  EXPECT_FALSE(request.sizes);
  EXPECT_DOUBLE_EQ(request.wanted_share, 0.9);
  ASSERT_EQ(request.lots.size(), 1u);
  EXPECT_DOUBLE_EQ(request.lots[0].told.length->m(), 1000);
  EXPECT_DOUBLE_EQ(request.lots[0].told.mass->g(), 500);
  EXPECT_FALSE(request.lots[0].category);
}

TEST(DriveQuestion, TakesOneLegForAllOrOneByTheFoot) {
  EXPECT_DOUBLE_EQ(asked(forty_pairs()).leg.of_foot, 0.8);
  EXPECT_DOUBLE_EQ(asked(forty_pairs().with("/drive/legOfFoot", "1.2")).leg.of_foot, 1.2);
  const LegRule leg = asked(forty_pairs().with("/legHeightMm", "180")).leg;
  EXPECT_DOUBLE_EQ(leg.of_foot, 0);
  EXPECT_DOUBLE_EQ(leg.height.mm(), 180);
}

TEST(DriveQuestion, TellsWhatIsMissingOrOfOneFootAlone) {
  EXPECT_EQ(faults_of(forty_pairs().without("/drive")), Faults{"/drive required"});
  EXPECT_EQ(faults_of(forty_pairs().without("/drive/pairs")), Faults{"/drive/pairs required"});
  EXPECT_EQ(faults_of(forty_pairs().without("/drive/groups")), Faults{"/drive/groups required"});
  EXPECT_EQ(faults_of(forty_pairs().without("/drive/groups/1/ageYears")),
            Faults{"/drive/groups/1/ageYears required"});
  EXPECT_EQ(faults_of(forty_pairs().with("/drive/groups/1/who", "\"boy\"")),
            Faults{"/drive/groups/1/who unknown_word"});
  EXPECT_EQ(faults_of(forty_pairs().with("/drive/lots/0/category", "4")),
            Faults{"/drive/lots/0/g required"});
  EXPECT_EQ(faults_of(with_a_lot().without("/drive/lots/0/m")), Faults{});
  EXPECT_EQ(faults_of(with_a_lot().without("/drive/lots/0/g")), Faults{});
  EXPECT_EQ(faults_of(forty_pairs().with("/stitchCount", "44")),
            Faults{"/stitchCount unknown_field"});
  EXPECT_EQ(faults_of(forty_pairs().without("/swatch").without("/yarn")),
            Faults{"/swatch required"});
}

TEST(DriveQuestion, HoldsBothSidesOfEveryLimit) {
  const struct {
    const char* pointer;
    const char* last_good;
    const char* first_bad;
  } limits[] = {
      {"/drive/pairs", "1", "0"},
      {"/drive/pairs", "10000", "10001"},
      {"/drive/groups/1/ageYears", "2", "1"},
      {"/drive/groups/1/ageYears", "17", "18"},
      {"/drive/groups/1/share", "0.01", "0.009"},
      {"/drive/groups/1/share", "10000", "10001"},
      {"/drive/sizes", "1", "0"},
      {"/drive/sizes", "12", "13"},
      {"/drive/wantedShare", "0.1", "0.09"},
      {"/drive/wantedShare", "0.999", "1"},
      {"/drive/legOfFoot", "0.2", "0.19"},
      {"/drive/legOfFoot", "3", "3.01"},
      {"/drive/lots/0/g", "5", "4.9"},
      {"/drive/lots/0/g", "1000000", "1000001"},
      {"/drive/lots/0/m", "5", "4.9"},
      {"/drive/lots/0/m", "1000000", "1000001"},
      {"/drive/lots/0/mPer100G", "5", "4.9"},
      {"/drive/lots/0/mPer100G", "5000", "5001"},
      {"/drive/lots/0/category", "0", "-1"},
      {"/drive/lots/0/category", "7", "8"},
  };
  for (const auto& limit : limits) {
    EXPECT_EQ(faults_of(with_a_lot().with(limit.pointer, limit.last_good)), Faults{})
        << limit.pointer;
    EXPECT_EQ(faults_of(with_a_lot().with(limit.pointer, limit.first_bad)),
              Faults{std::string(limit.pointer) + " out_of_range"});
  }
}

TEST(DriveQuestion, IsRefusedWithWhatNoSizeCanBe) {
  const std::string reply = answer("drive", forty_pairs().with("/legHeightMm", "60").text());
  EXPECT_TRUE(has(reply, R"("field":"/legHeightMm","code":"leg_too_short")")) << reply;
}

}  // namespace
}  // namespace twinround

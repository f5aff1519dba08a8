// The question `roster` at the core's door.
#include "roster_question.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "answer.h"
#include "course_example.h"
#include "json_parts.h"
#include "random_request.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

constexpr unsigned kSeed = 1847;

const RequestText kClass = {{"/legHeightMm", "200"}, {"/cuffMm", "30"}, {"/inHand/balls", "2"}};
const RequestText kSeat = full_request()
                              .without("/version")
                              .without("/legHeightMm")
                              .without("/stitchCount")
                              .without("/swatch/stretchedWidthMm");

std::string asked(const std::vector<RequestText>& seats, const RequestText& common = kClass) {
  return course(common, member("seats", list_of(seats)));
}

std::string roster(const std::vector<RequestText>& seats) {
  return answer("roster", asked(seats));
}

// The text of each seat's answer.
std::vector<std::string> seats_of(const std::string& reply) {
  const auto seats = parts_of(parts_of(parts_of(reply).back()).front());
  return {seats.begin(), seats.end()};
}

TEST(RosterQuestion, AnswersSeatBySeatInTheEnvelope) {
  const std::string reply = roster({kSeat, kSeat.with("/pace/stitchesPerMinute", "30")});
  EXPECT_TRUE(reply.starts_with(
      R"({"ok":true,"version":1,"rules":2,"roster":{"seats":[{"line":{"category":4,)"
      R"("stitchCount":40,"totalRounds":120,)"))
      << reply;
  EXPECT_TRUE(says_part(reply, R"("planned":2,"wool":[{"category":4,"pairs":2,)"));
  EXPECT_TRUE(
      reply.ends_with(R"("needles":[{"mm":4.5,"us":"7","uk":"7","cableMm":1000,"count":2}]}})"))
      << reply;
}

TEST(RosterQuestion, ASeatThatCannotBePlannedSaysWhyAndTheOthersStand) {
  const std::string reply = roster(
      {kSeat.with("/legHeightMm", "60"), kSeat, kSeat.with("/hat", "1"), {{"/cuffMm", "x"}}});
  // The last seat is no JSON, and so is the whole.
  EXPECT_EQ(faults_in(reply), Faults{"/seats/3/cuffMm bad_json"});
  const std::string mended = roster(
      {kSeat.with("/legHeightMm", "60"), kSeat, kSeat.with("/hat", "1"), {{"/cuffMm", "20"}}});
  const auto seats = seats_of(mended);
  ASSERT_EQ(seats.size(), 4u);
  EXPECT_EQ(faults_in(seats[0]), Faults{"/legHeightMm leg_too_short"});
  EXPECT_TRUE(says_part(seats[1], "\"line\""));
  EXPECT_EQ(faults_in(seats[2]), Faults{"/hat unknown_field"});
  EXPECT_EQ(faults_in(seats[3]), (Faults{"/swatch required", "/foot required"}));
  EXPECT_TRUE(says_part(mended, "\"planned\":1,"));
}

TEST(RosterQuestion, TellsWhatDoesHarmAndNoDoubts) {
  const auto seats =
      seats_of(roster({kSeat.with("/swatch/readings/0/stitches", "23"),
                       kSeat.with("/inHand/balls", "0.5").with("/swatch/washed", "false")}));
  EXPECT_TRUE(says_part(seats[0], "\"code\":\"gauge_dense\""));
  EXPECT_TRUE(says_part(seats[1], R"("odd":[{"harm":"supply",)"
                                  R"("field":"/inHand/balls","code":"yarn_short",)"));
  EXPECT_FALSE(says_part(seats[1], "unwashed_swatch"));
}

TEST(RosterQuestion, WhatTheClassHasInHandHoldsForEverySeatWithoutItsOwn) {
  const std::string text =
      asked({kSeat, kSeat.with("/inHand/balls", "3")}, kClass.with("/inHand/balls", "0.5"));
  const std::string reply = answer("roster", text);
  const auto seats = seats_of(reply);
  EXPECT_TRUE(says_part(seats[0], "yarn_short"));
  EXPECT_FALSE(says_part(seats[1], "yarn_short"));
}

TEST(RosterQuestion, TellsWhereTheClassIsWrong) {
  EXPECT_EQ(faults_in(answer("roster", asked({kSeat}, kClass.with("/cuffMm", "301")))),
            Faults{"/class/cuffMm out_of_range"});
  EXPECT_EQ(faults_in(answer("roster", R"({"version":1,"class":{},"seats":[]})")),
            Faults{"/seats required"});
  EXPECT_EQ(faults_in(answer("roster", R"({"version":1,"class":{},"seats":[[]]})")),
            Faults{"/seats/0 wrong_type"});
  EXPECT_EQ(faults_in(answer("roster", R"({"version":2,"class":{},"seats":[{}]})")),
            Faults{"/version newer_version"});
}

TEST(RosterQuestion, HoldsAThousandSeatsAndNotOneMore) {
  const std::vector<RequestText> thousand(1000, {{"/cuffMm", "20"}});
  EXPECT_EQ(seats_of(roster(thousand)).size(), 1000u);
  std::vector<RequestText> more = thousand;
  more.push_back(thousand.front());
  EXPECT_EQ(faults_in(roster(more)), Faults{"/seats too_many_items"});
}

TEST(RosterQuestion, ReadsAMebibyteToTheLastByteAndNotOneMore) {
  std::string text = asked({kSeat});
  text.resize(kMostRosterBytes, ' ');
  EXPECT_TRUE(answer("roster", text).starts_with("{\"ok\":true"));
  text += ' ';
  const std::string reply = answer("roster", text);
  EXPECT_EQ(faults_in(reply), Faults{" too_large_text"});
  EXPECT_TRUE(says_part(reply, "\"max\":1048576,")) << reply;
  // The other questions stay at 64 KiB.
  EXPECT_EQ(faults_in(answer("weeks", text)), Faults{" too_large_text"});
  EXPECT_EQ(faults_in(answer("plan", std::string(65537, ' '))), Faults{" too_large_text"});
}

TEST(RosterQuestion, ASeatLongerThanAnyRequestIsLeftUnread) {
  const std::string text = R"({"version":1,"class":{},"seats":[{"cuffMm":20,"x":")" +
                           std::string(70000, 'x') + "\"}," + kSeat.text() + "]}";
  const std::string reply = answer("roster", text);
  EXPECT_EQ(faults_in(seats_of(reply)[0]), Faults{" too_large_text"});
  EXPECT_LT(reply.size(), 3000u);
}

// A thousand seats of random requests, the class with nothing but a version: each seat's line is
// its plan's.
TEST(RosterProperty, SeatsAreSinglePlans) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  std::vector<RequestText> requests;
  for (int i = 0; i < 1000; ++i) requests.push_back(likely_request(random));
  const std::string reply = answer("roster", asked(requests, {{"/version", "1"}}));
  const auto seats = seats_of(reply);
  ASSERT_EQ(seats.size(), requests.size());
  int plans = 0;
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const std::string text = requests[i].text();
    SCOPED_TRACE(text);
    const std::string& seat = seats[i];
    const std::string single = answer("plan", text);
    ASSERT_EQ(says_part(seat, "{\"line\":"), single.starts_with("{\"ok\":true"));
    if (!says_part(seat, "{\"line\":")) {
      EXPECT_EQ(faults_in(seat), faults_in(single));
      continue;
    }
    ++plans;
    const std::size_t behind_choices = single.find("\"ribsThatFit\"");
    EXPECT_EQ(number_after(seat, "stitchCount"), number_after(single, "stitchCount"));
    for (const char* figure :
         {"totalRounds", "mPerPair", "mWithMargin", "gPerSock", "gWithMargin", "minutes"}) {
      EXPECT_EQ(number_after(seat, figure), number_after(single, figure, behind_choices)) << figure;
    }
  }
  EXPECT_GT(plans, 200);
}

}  // namespace
}  // namespace twinround

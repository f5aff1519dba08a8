// The question `weeks` at the core's door.
#include "weeks_question.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "answer.h"
#include "course_example.h"
#include "weeks.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

const RequestText kClass = full_request().without("/version").without("/stitchCount");
const RequestText kAt20 = {{"/pace/stitchesPerMinute", "20"}};
const RequestText kWorsted = {{"/yarn/category", "4"}};
const RequestText kFingering = {{"/yarn/category", "1"}};

const std::string kFour =
    R"(,"meetings":4,"minutesInClass":90,"minutesAtHome":60,"castOnMinutes":10)";

std::string weeks(const std::vector<RequestText>& knitters, const std::string& course_of = kFour) {
  return answer("weeks", course(kClass, member("knitters", list_of(knitters)) + course_of));
}

TEST(WeeksQuestion, AnswersInTheEnvelope) {
  // Worked out by hand in core/teaching/weeks_test: the contract's example at 20 a minute.
  const std::string reply = weeks({kAt20});
  EXPECT_TRUE(reply.starts_with(
      R"({"ok":true,"version":1,"rules":2,"weeks":{"minutes":540,"knitters":[{"weeks":{)"
      R"("stitchesPerMinute":20,"stitchCount":40,"totalRounds":120,"meetings":[)"
      R"({"roundsAtStart":0,"roundsAtEnd":21},{"roundsAtStart":34,"roundsAtEnd":55},)"
      R"({"roundsAtStart":69,"roundsAtEnd":90},{"roundsAtStart":104,"roundsAtEnd":120}],)"
      R"("milestones":[{"milestone":"castOn","rounds":0,"minutes":10,"when":"class","meeting":1},)"))
      << reply;
  EXPECT_TRUE(says_part(reply, R"("milestone":"tryOn","rounds":66,)"));
  EXPECT_TRUE(says_part(reply, R"("when":"home","meeting":2})"));
  EXPECT_TRUE(reply.ends_with(R"("finishes":true,"leastPace":20}}]}})")) << reply;
}

TEST(WeeksQuestion, TellsEveryYarnOfTheClass) {
  const std::string reply = weeks({kWorsted, kFingering});
  EXPECT_EQ(times(reply, "\"weeks\":{\"stitchesPerMinute\":15"), 2);
  // The finer yarn has the more rounds and is not done.
  const std::size_t finer = reply.rfind("{\"weeks\"");
  EXPECT_GT(number_after(reply, "totalRounds", finer), number_after(reply, "totalRounds"));
  EXPECT_LT(number_after(reply, "slackMinutes", finer), 0);
  EXPECT_TRUE(says_part(reply.substr(finer), R"("when":"late"})"));
}

TEST(WeeksQuestion, CastsOnInTheUsualTimeUnlessTold) {
  const std::string reply = weeks({kAt20}, R"(,"meetings":1,"minutesInClass":90)");
  EXPECT_TRUE(says_part(reply, R"("milestone":"castOn","rounds":0,"minutes":20,)")) << reply;
  EXPECT_EQ(kCastOnTime.minutes(), 20) << "as the table of fields says";
}

TEST(WeeksQuestion, AKnitterWithoutAPlanSaysWhyAndTheOthersStand) {
  const std::string reply = weeks({kAt20, {{"/legHeightMm", "60"}}});
  EXPECT_EQ(faults_in(reply), Faults{"/legHeightMm leg_too_short"});
  EXPECT_EQ(times(reply, "\"finishes\""), 1);
}

TEST(WeeksQuestion, TellsWhatIsMissingOrWrong) {
  EXPECT_EQ(faults_in(answer("weeks", R"({"version":1})")),
            (Faults{"/class required", "/knitters required", "/meetings required",
                    "/minutesInClass required"}));
  EXPECT_EQ(faults_in(weeks({kAt20, {{"/pace/stitchesPerMinute", "0"}}})),
            Faults{"/knitters/1/pace/stitchesPerMinute out_of_range"});
  EXPECT_EQ(faults_in(weeks(std::vector<RequestText>(61, kAt20))),
            Faults{"/knitters too_many_items"});
  EXPECT_EQ(times(weeks(std::vector<RequestText>(60, kAt20)), "\"finishes\""), 60);
}

struct Limit {
  const char* name = "";
  const char* last_good = "";
  const char* first_bad = "";
};

TEST(WeeksQuestion, HoldsBothSidesOfEveryLimit) {
  const std::vector<Limit> limits = {
      {"meetings", "1", "0"},         {"meetings", "30", "31"},
      {"minutesInClass", "5", "4.9"}, {"minutesInClass", "1440", "1440.1"},
      {"minutesAtHome", "0", "-0.1"}, {"minutesAtHome", "10080", "10080.1"},
      {"castOnMinutes", "0", "-0.1"}, {"castOnMinutes", "1440", "1440.1"},
  };
  for (const Limit& limit : limits) {
    SCOPED_TRACE(limit.name);
    const auto with = [&](const char* value) {
      std::string all;
      for (const char* name : {"meetings", "minutesInClass", "minutesAtHome", "castOnMinutes"}) {
        all += member(name, std::string(name) == limit.name ? value : "10");
      }
      return faults_in(weeks({kAt20}, all));
    };
    EXPECT_EQ(with(limit.last_good), Faults{});
    EXPECT_EQ(with(limit.first_bad), Faults{"/" + std::string(limit.name) + " out_of_range"});
  }
}

}  // namespace
}  // namespace twinround

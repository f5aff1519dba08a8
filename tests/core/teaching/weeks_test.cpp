#include "weeks.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "../properties/random_requests.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::planned;
using test::woman_in_worsted;

Duration minutes(double value) {
  return Duration::from_minutes(value);
}

Meetings meetings(int count, double in_class, double homework, double cast_on) {
  return {count, minutes(in_class), minutes(homework), minutes(cast_on)};
}

Weeks weeks_for(const PlanRequest& request, const Meetings& course) {
  return weeks_of(request, planned(request), course);
}

std::vector<std::string> rounds_of(const Weeks& weeks) {
  std::vector<std::string> all;
  for (const MeetingRounds& meeting : weeks.meetings) {
    all.push_back(std::to_string(meeting.at_start.value()) + "-" +
                  std::to_string(meeting.at_end.value()));
  }
  return all;
}

// "round: meeting" or "round: after meeting", or "round: late", of each milestone.
std::vector<std::string> reached(const Weeks& weeks) {
  const std::vector<std::string> names = {"cast on", "toe", "shift", "try on", "cuff", "bind off"};
  std::vector<std::string> all;
  for (const MilestoneReached& one : weeks.milestones) {
    const std::string when =
        one.meeting ? (one.at_home ? "after " : "in ") + std::to_string(*one.meeting) : "late";
    all.push_back(names[static_cast<std::size_t>(one.milestone)] + " " +
                  std::to_string(one.rounds.value()) + " " + when);
  }
  return all;
}

// By hand, the woman's 40 stitches in worsted: a toe of 17 rounds that are 564 stitches, then 103
// rounds of 40; 9368 stitches the pair. At 20 a minute the toe takes 1128/20 + 17/3 = 62.067
// minutes, each round above it 80/20 + 1/3 = 4.333, all of it 508.4.
PlanRequest woman_at_20() {
  PlanRequest request = woman_in_worsted();
  request.stitches_per_minute = 20;
  return request;
}
// Meetings end at 90, 240, 390 and 540 minutes and begin at 0, 150, 300 and 450.
const Meetings kFour = meetings(4, 90, 60, 10);

TEST(Weeks, CountTheRoundsThatAreWhole) {
  // Toe done at 72.067; (90 - 72.067)/4.333 = 4.14, (150 - ...) 17.98, (240) 38.75, (300) 52.6,
  // (390) 73.4, (450) 87.2, (540) more than there are.
  const Weeks weeks = weeks_for(woman_at_20(), kFour);
  EXPECT_EQ(rounds_of(weeks), (std::vector<std::string>{"0-21", "34-55", "69-90", "104-120"}));
}

TEST(Weeks, SayWhatIsLeftOfTheTime) {
  const Weeks weeks = weeks_for(woman_at_20(), kFour);
  EXPECT_NEAR(weeks.available.minutes(), 540, 1e-9);
  EXPECT_NEAR(weeks.work.minutes(), 518.4, 1e-9);
  EXPECT_NEAR(weeks.slack.minutes(), 21.6, 1e-9);
  EXPECT_TRUE(weeks.finishes);
}

TEST(Weeks, SayWhenEachMilestoneIsReached) {
  // First shift after 4 rounds of rib, at 89.4. As long as the foot: 246 x 0.96 x 28/101.6 = 65.08,
  // so 66 rounds, at 284.4. The cuff's 8 rounds begin after 112, at 483.7.
  EXPECT_EQ(reached(weeks_for(woman_at_20(), kFour)),
            (std::vector<std::string>{"cast on 0 in 1", "toe 17 in 1", "shift 21 in 1",
                                      "try on 66 after 2", "cuff 112 in 4", "bind off 120 in 4"}));
}

TEST(Weeks, AMeetingOrItsHomeworkHoldsWhatFallsOnItsEnd) {
  const double toe_done = 10 + 1128.0 / 20 + 17 / 3.0;
  const auto toe = [](const Meetings& course) {
    return reached(weeks_for(woman_at_20(), course))[1];
  };
  EXPECT_EQ(toe(meetings(3, toe_done, 60, 10)), "toe 17 in 1");
  EXPECT_EQ(toe(meetings(3, toe_done - 0.001, 60, 10)), "toe 17 after 1");
  EXPECT_EQ(toe(meetings(3, 40, toe_done - 40, 10)), "toe 17 after 1");
  EXPECT_EQ(toe(meetings(3, 40, toe_done - 40.001, 10)), "toe 17 in 2");
  EXPECT_EQ(toe(meetings(1, toe_done - 0.001, 60, 10)), "toe 17 late");
}

TEST(Weeks, ARoundCountsOnceItIsFinished) {
  const double toe_done = 10 + 1128.0 / 20 + 17 / 3.0;
  EXPECT_EQ(rounds_of(weeks_for(woman_at_20(), meetings(1, toe_done, 0, 10)))[0], "0-17");
  EXPECT_EQ(rounds_of(weeks_for(woman_at_20(), meetings(1, toe_done - 0.001, 0, 10)))[0], "0-16");
}

TEST(Weeks, WithoutHomeworkGoOnWhereTheyEnded) {
  // 508.4 + 10 minutes in six meetings of 90.
  const Weeks weeks = weeks_for(woman_at_20(), meetings(6, 90, 0, 10));
  for (std::size_t i = 1; i < weeks.meetings.size(); ++i) {
    EXPECT_EQ(weeks.meetings[i].at_start, weeks.meetings[i - 1].at_end);
  }
  EXPECT_NEAR(weeks.slack.minutes(), 21.6, 1e-9);
}

TEST(Weeks, ACastOnLongerThanTheMeetingIsFinishedAtHome) {
  const Weeks weeks = weeks_for(woman_at_20(), meetings(2, 30, 60, 31));
  EXPECT_EQ(reached(weeks)[0], "cast on 0 after 1");
  EXPECT_EQ(rounds_of(weeks)[0], "0-0");
}

TEST(Weeks, SayWhoFallsBehindAndWhatPaceWouldDo) {
  // 540 less 10 for the cast-on and 40 for the turns: 9368/490 = 19.1.
  EXPECT_EQ(weeks_for(woman_at_20(), kFour).least_pace, 20);
  PlanRequest slow = woman_at_20();
  slow.stitches_per_minute = 15;
  const Weeks weeks = weeks_for(slow, kFour);
  EXPECT_FALSE(weeks.finishes);
  // 9368/15 + 40 + 10 = 674.53.
  EXPECT_NEAR(weeks.slack.minutes(), 540 - 674.5333333, 1e-6);
  EXPECT_EQ(reached(weeks).back(), "bind off 120 late");
  EXPECT_EQ(weeks.least_pace, 20) << "what would do does not hang on her own pace";
}

TEST(Weeks, APaceThatJustDoesIsTheLeast) {
  // 9368/(A - 50) = 20 exactly where A = 518.4.
  const auto least = [](double time) {
    return weeks_for(woman_at_20(), meetings(1, time, 0, 10)).least_pace;
  };
  EXPECT_EQ(least(518.4), 20);
  EXPECT_EQ(least(518.399), 21);
  EXPECT_TRUE(weeks_for(woman_at_20(), meetings(1, 518.4, 0, 10)).finishes);
  EXPECT_FALSE(weeks_for(woman_at_20(), meetings(1, 518.399, 0, 10)).finishes);
}

TEST(Weeks, NoPaceIsFastEnoughForTheTurnsOrPastTheFastestToldThere) {
  const auto least = [](double time) {
    return weeks_for(woman_at_20(), meetings(1, time, 0, 10)).least_pace;
  };
  EXPECT_FALSE(least(49));
  EXPECT_FALSE(least(50));
  // 9368/200 = 46.84.
  EXPECT_EQ(least(96.84), 200);
  EXPECT_FALSE(least(96.83));
  EXPECT_EQ(least(50 + 9368.0), 1);
  EXPECT_EQ(least(50 + 9368.0 * 2), 1);
}

TEST(Weeks, ARibThatStaysOrASockWithoutACuffHasNoSuchMilestone) {
  PlanRequest straight = woman_at_20();
  straight.rib.rounds_per_shift = 0;
  straight.cuff = test::mm(0);
  EXPECT_EQ(reached(weeks_for(straight, kFour)),
            (std::vector<std::string>{"cast on 0 in 1", "toe 17 in 1", "try on 66 after 2",
                                      "bind off 120 in 4"}));
}

TEST(WeeksProperty, RoundsOnlyGrowAndTheLeastPaceIsThat) {
  test::for_random_plans(600, [](PlanRequest request, const Plan&, test::Dice& dice) {
    request.stitches_per_minute = dice.between(1, 200);
    const Meetings course = meetings(dice.whole(1, kMostMeetings), dice.between(10, 300),
                                     dice.chance(0.3) ? 0 : dice.between(0, 1000), 20);
    const Weeks weeks = weeks_for(request, course);
    Rounds before;
    for (const MeetingRounds& meeting : weeks.meetings) {
      EXPECT_LE(before, meeting.at_start);
      EXPECT_LE(meeting.at_start, meeting.at_end);
      before = meeting.at_end;
    }
    const Plan plan = planned(request);
    EXPECT_EQ(before == plan.length.total, weeks.finishes);
    EXPECT_NEAR(weeks.work.minutes(), 20 + plan.time.minutes(), 1e-6);
    EXPECT_EQ(weeks.finishes, weeks.milestones.back().meeting.has_value());
    if (!weeks.least_pace) return;
    request.stitches_per_minute = *weeks.least_pace;
    EXPECT_TRUE(weeks_for(request, course).finishes);
    if (*weeks.least_pace == 1) return;
    request.stitches_per_minute = *weeks.least_pace - 1;
    EXPECT_FALSE(weeks_for(request, course).finishes);
  });
}

}  // namespace
}  // namespace twinround

#include "yarn_course.h"

#include <gtest/gtest.h>

#include "sock_examples.h"
#include "ten_rounds.h"

namespace twinround {
namespace {

using test::metres;
using test::ten_rounds;

TEST(TheCourseOfAYarn, AddsUpFromTailToTail) {
  const YarnCourse course = ten_rounds();
  ASSERT_EQ(course.rounds.size(), 10U);
  ASSERT_EQ(course.used.size(), 11U);
  EXPECT_NEAR(course.used[0].m(), 0.3, 1e-12);
  EXPECT_NEAR(course.used[1].m(), 0.4, 1e-12);
  EXPECT_NEAR(course.used[10].m(), 1.3, 1e-12);
  EXPECT_NEAR(course.whole.m(), 1.8, 1e-12);
}

TEST(TheCourseOfAYarn, IsThePlansOwnNeed) {
  const Result<Plan> plan = make_plan(test::woman_in_worsted());
  ASSERT_TRUE(plan.ok());
  const YarnNeed& need = plan.value().yarn.need;
  const YarnCourse course = yarn_course(
      {plan.value().rounds, plan.value().yarn.loop, need.cast_on, need.bind_off, need.tails});
  EXPECT_NEAR(course.whole.mm(), need.sock.mm(), 1e-6);
}

TEST(APlaceInTheSock, IsARoundAndTheShareOfItThatIsKnit) {
  const struct {
    double m;
    int round;
    double share;
  } rows[] = {
      {-1, 1, 0},        {0, 1, 0},        {0.29, 1, 0},      // tail and cast-on
      {0.3, 1, 0},       {0.35, 1, 0.5},   {0.399, 1, 0.99},  // the first round
      {0.4, 2, 0},       {0.401, 2, 0.01},                    // the second begins
      {1.299, 10, 0.99}, {1.3, 10, 1},     {1.5, 10, 1},      // the bind-off lies at the end
      {1.8, 10, 1},      {99, 10, 1},
  };
  const YarnCourse course = ten_rounds();
  for (const auto& row : rows) {
    const SockPlace place = place_of_yarn(course, metres(row.m));
    EXPECT_EQ(place.round, row.round) << row.m;
    EXPECT_NEAR(place.share, row.share, 1e-9) << row.m;
  }
}

}  // namespace
}  // namespace twinround

#include "pace.h"

#include <gtest/gtest.h>

namespace twinround {
namespace {

TEST(Pace, IsStitchesAndTwoTurnsARound) {
  // 9368 stitches at 15 a minute are 624.533 minutes; 120 rounds of two turns of 10 s are 40.
  EXPECT_NEAR(knitting_time(9368, Rounds(120), 15).minutes(), 664.5333333, 1e-6);
}

TEST(Pace, TheTurnsStayHoweverFastTheHands) {
  EXPECT_NEAR(knitting_time(9368, Rounds(120), 1e12).minutes(), 40, 1e-6);
}

TEST(Pace, ALearnerMakesFifteenAMinute) {
  EXPECT_EQ(kLearnerPace, 15);
  EXPECT_NEAR(kTurn.minutes(), 1.0 / 6.0, 1e-15);
}

}  // namespace
}  // namespace twinround

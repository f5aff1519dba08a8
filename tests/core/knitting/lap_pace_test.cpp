#include "lap_pace.h"

#include <gtest/gtest.h>

namespace twinround {
namespace {

Lap lap(int stitches, double seconds) {
  return {stitches, Duration::from_seconds(seconds)};
}

TEST(LapPace, TakesTheTwoTurnsOfARoundOff) {
  EXPECT_NEAR(turns_of_a_lap().minutes() * 60, 20, 1e-9);
  // 80 stitches in five minutes and the turns.
  EXPECT_NEAR(pace_of({lap(80, 320)}), 16, 1e-9);
}

TEST(LapPace, IsTheMiddleOfTheLaps) {
  EXPECT_NEAR(pace_of({lap(80, 320), lap(80, 260)}), 18, 1e-9);
  // 16, 20 and 80/60 with a telephone call in it.
  EXPECT_NEAR(pace_of({lap(80, 3620), lap(80, 260), lap(80, 320)}), 16, 1e-9);
}

TEST(LapPace, IsMovedNoFurtherThanTheOtherLapsByAnyOneOfThem) {
  for (const double seconds : {20.001, 60.0, 320.0, 5000.0, 86400.0}) {
    const double pace = pace_of({lap(80, 320), lap(80, seconds), lap(80, 340)});
    EXPECT_GE(pace, 15 - 1e-9) << seconds;
    EXPECT_LE(pace, 16 + 1e-9) << seconds;
  }
}

}  // namespace
}  // namespace twinround

#include "toe_turn.h"

#include <gtest/gtest.h>

#include <string>

#include "sock_examples.h"

namespace twinround {
namespace {

// 16 cast on, increased to 40 in rounds 2, 3, 5, 6, 8 and 11 of 17.
Toe toe_of_40(ToeShape shape = ToeShape::round) {
  return shape_toe({Stitches(40), test::mm(246), RoundGauge::per_mm(28 / 101.6), 0.25, 0.4, shape});
}

const char* word(ToeSides sides) {
  switch (sides) {
    case ToeSides::none:
      return "plain";
    case ToeSides::both:
      return "both";
    case ToeSides::great:
      return "great";
    case ToeSides::little:
      break;
  }
  return "little";
}

// "from 6: 8 both->plain 32", an added round with a +.
std::string told(const Toe& begun, int rounds_done, int count) {
  const auto turned = turn_toe(begun, rounds_done, Stitches(count));
  if (!turned) return "no way";
  std::string text = "from " + std::to_string(turned->from) + ":";
  for (const ToeStep& step : turned->steps) {
    text += std::string(" ") + (step.added ? "+" : "") + std::to_string(step.round) + " " +
            word(step.begun) + "->" + word(step.worked) + " " +
            std::to_string(step.stitches.value()) + ";";
  }
  return text;
}

TEST(ToeTurn, SaysWhichRoundsAreWorkedOtherwise) {
  const Toe begun = toe_of_40();
  const struct {
    int rounds_done;
    int count;
    const char* steps;
  } table[] = {
      // The count it was begun for: nothing to do.
      {5, 40, "from 5:"},
      // Fewer: the last increases ahead stay out.
      {5, 36, "from 5: 11 both->plain 36;"},
      {10, 36, "from 10: 11 both->plain 36;"},
      {5, 32, "from 5: 8 both->plain 32; 11 both->plain 32;"},
      // Two fewer: one side of the last one.
      {5, 38, "from 5: 11 both->great 38;"},
      {5, 34, "from 5: 8 both->great 34; 11 both->plain 34;"},
      // Past the increase: back to the round before it.
      {11, 36, "from 10: 11 both->plain 36;"},
      {60, 36, "from 10: 11 both->plain 36;"},
      // Fewer than the cast-on's 16: only begun anew.
      {0, 16,
       "from 0: 2 both->plain 16; 3 both->plain 16; 5 both->plain 16; 6 both->plain 16; "
       "8 both->plain 16; 11 both->plain 16;"},
      {0, 14, "no way"},
      // More: plain rounds ahead between plain ones, the latest first.
      {14, 44, "from 14: 17 plain->both 44;"},
      {5, 48, "from 5: 15 plain->both 44; 17 plain->both 48;"},
      {16, 48, "from 16: 17 plain->both 44; +19 plain->both 48;"},
      {17, 44, "from 17: +18 plain->both 44;"},
      {17, 46, "from 17: +18 plain->both 44; +20 plain->great 46;"},
      {60, 44, "from 17: +18 plain->both 44;"},
      {14, 42, "from 14: 17 plain->great 42;"},
  };
  for (const auto& row : table) {
    EXPECT_EQ(told(begun, row.rounds_done, row.count), row.steps)
        << row.rounds_done << " rounds, " << row.count;
  }
}

TEST(ToeTurn, AFullerSideLosesFirst) {
  // Left and right: the great toe's side is full after round 9, the other one after 16.
  const Toe begun = toe_of_40(ToeShape::left_right);
  EXPECT_EQ(told(begun, 0, 36), "from 0: 9 great->plain 32; 16 little->plain 36;");
  // What is knit is knit: then the other side gives both.
  EXPECT_EQ(told(begun, 9, 36), "from 9: 13 little->plain 36; 16 little->plain 36;");
}

TEST(ToeTurn, EveryTurnedToeIsOneThatCanBeKnit) {
  for (const ToeShape shape : {ToeShape::round, ToeShape::even, ToeShape::left_right}) {
    const Toe begun = toe_of_40(shape);
    for (int done = 0; done <= 30; ++done) {
      for (int count = 16; count <= 72; count += 2) {
        const auto turned = turn_toe(begun, done, Stitches(count));
        ASSERT_TRUE(turned);
        const Toe& toe = turned->toe;
        ASSERT_EQ(toe.counts.back(), count) << done;
        ASSERT_EQ(toe.sides.front(), ToeSides::none);
        int together = 0;
        for (std::size_t r = 0; r < toe.sides.size(); ++r) {
          together = toe.sides[r] == ToeSides::none ? 0 : together + 1;
          ASSERT_LE(together, 2) << done << " rounds, " << count;
          // What stays is what was knit.
          if (static_cast<int>(r) >= turned->from) continue;
          ASSERT_EQ(toe.sides[r], begun.sides[r]) << done << " rounds, " << count;
        }
        ASSERT_GE(toe.sides.size(), begun.sides.size());
      }
    }
  }
}

}  // namespace
}  // namespace twinround

#include "message_words.h"

#include <gtest/gtest.h>

namespace twinround {
namespace {

TEST(MessageWords, AShareIsToldInWholePercentWithoutItsSign) {
  EXPECT_EQ(percent(0.883), "88 %");
  EXPECT_EQ(percent(-0.105), "11 %");  // half up
  EXPECT_EQ(percent(-0.1), "10 %");
  EXPECT_EQ(percent(0), "0 %");
  EXPECT_EQ(percent(1.5), "150 %");
}

TEST(MessageWords, ALengthIsToldToTheMillimetre) {
  EXPECT_EQ(cm(Length::from_mm(310)), "31.0 cm");
  EXPECT_EQ(cm(Length::from_mm(114.77)), "11.5 cm");
  EXPECT_EQ(cm(Length::from_mm(0)), "0.0 cm");
}

}  // namespace
}  // namespace twinround

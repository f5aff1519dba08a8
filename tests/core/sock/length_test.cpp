#include "length.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::number_in;
using test::told;

LengthInput woman() {
  LengthInput input;
  input.foot_length = mm(246);
  input.heel_girth = mm(310);
  input.leg_height = mm(200);
  input.cuff = mm(30);
  input.length_ease = -0.04;
  input.gauge = RoundGauge::per(28, mm(101.6));
  input.toe = Rounds(17);
  return input;
}

SockLength divided(const LengthInput& input) {
  const Result<SockLength> result = divide_length(input);
  if (result.ok()) return result.value();
  ADD_FAILURE() << "refused";
  return {};
}

TEST(Length, IsTheFootWithItsEaseAndTheLeg) {
  const SockLength sock = divided(woman());
  EXPECT_NEAR(sock.length.mm(), 436.16, 1e-9);  // 246 x 0.96 + 200
  EXPECT_EQ(sock.total.value(), 120);           // 436.16 x 28/101.6 = 120.20
  EXPECT_EQ(sock.cuff.value(), 8);              // 30 x 28/101.6 = 8.27
  EXPECT_EQ(sock.spiral.value(), 95);           // 120 - 17 - 8
}

TEST(Length, IsTriedOn5CentimetresPastItsFoot) {
  EXPECT_EQ(kTryOnPastFoot.mm(), 50);
  EXPECT_EQ(divided(woman()).try_on.value(), 79);  // (246 x 0.96 + 50) x 28/101.6 = 78.86
  LengthInput input = woman();
  input.gauge = RoundGauge::per_mm(0.25);
  input.length_ease = 0;
  struct Row {
    double foot = 0;
    int round = 0;
  };
  for (const Row& row : std::vector<Row>{{240, 73}, {239.9, 72}, {244, 74}}) {  // (foot + 50)/4
    input.foot_length = mm(row.foot);
    EXPECT_EQ(divided(input).try_on.value(), row.round) << row.foot;
  }
}

TEST(Length, IsTriedOnBeforeItsCuffIsBegun) {
  // A baby's: the heel is small, and 5 cm past the foot there is a cuff.
  LengthInput input = woman();
  input.foot_length = mm(100);
  input.heel_girth = mm(130);
  input.length_ease = 0;
  input.gauge = RoundGauge::per_mm(0.3);
  input.toe = Rounds(9);
  struct Row {
    double leg = 0;
    int round = 0;
    int cuff_from = 0;
  };
  // 150 x 0.3 = 45 as long as the cuff, of 9 rounds, begins no earlier.
  for (const Row& row : std::vector<Row>{{70, 42, 42}, {80, 45, 45}, {83.4, 45, 46}}) {
    input.leg_height = mm(row.leg);
    const SockLength sock = divided(input);
    EXPECT_EQ(sock.try_on.value(), row.round) << row.leg;
    EXPECT_EQ((sock.total - sock.cuff).value(), row.cuff_from) << row.leg;
  }
}

TEST(Length, IsTriedOnWithARoundOfTheRibAtLeast) {
  LengthInput input = woman();
  struct Row {
    int toe = 0;
    int round = 0;
  };
  for (const Row& row : std::vector<Row>{{77, 79}, {78, 79}, {79, 80}, {111, 112}}) {
    input.toe = Rounds(row.toe);
    EXPECT_EQ(divided(input).try_on.value(), row.round) << row.toe;
  }
}

TEST(Length, RoundsRoundHalfUp) {
  LengthInput input = woman();
  input.gauge = RoundGauge::per_mm(0.25);
  input.length_ease = 0;
  struct Row {
    double leg = 0;
    int total = 0;
  };
  // (246 + leg)/4
  for (const Row& row : std::vector<Row>{{200, 112}, {199.999, 111}, {202, 112}, {203.99, 112}}) {
    input.leg_height = mm(row.leg);
    EXPECT_EQ(divided(input).total.value(), row.total) << row.leg;
  }
  input.cuff = mm(30);  // 7.5
  EXPECT_EQ(divided(input).cuff.value(), 8);
  input.cuff = mm(29.9);
  EXPECT_EQ(divided(input).cuff.value(), 7);
}

TEST(Length, TheHeelIsAStadiumInSection) {
  // 310/2 - 0.571 x 0.25 x 246 = 155 - 35.1165
  EXPECT_NEAR(heel_depth(mm(310), mm(246)).mm(), 119.8835, 1e-9);
  // A circle of breadth b = 61.5 has girth pi b and depth b, to the rounding of pi/2 - 1 = 0.5708.
  EXPECT_NEAR(heel_depth(mm(std::acos(-1.0) * 61.5), mm(246)).mm(), 61.5, 0.02);
}

TEST(Length, ALegBelowTheBendIsRefusedWithTheLeast) {
  // 119.8835/sqrt(2) + 30 = 114.7704
  LengthInput input = woman();
  EXPECT_NEAR(divided(input).least_leg.mm(), 114.7704358, 1e-6);
  input.leg_height = mm(114.7705);
  EXPECT_TRUE(divide_length(input).ok());
  input.leg_height = mm(114.7704);
  const Result<SockLength> refused = divide_length(input);
  ASSERT_FALSE(refused.ok());
  ASSERT_EQ(told(refused.problems()), (std::vector<std::string>{"leg_too_short@/legHeightMm"}));
  EXPECT_NEAR(*number_in(refused.problems().front(), "leastMm"), 114.7704358, 1e-6);
}

TEST(Length, AShorterCuffLowersTheLeastLeg) {
  LengthInput input = woman();
  input.leg_height = mm(90);
  EXPECT_FALSE(divide_length(input).ok());
  input.cuff = mm(0);  // 84.77
  EXPECT_TRUE(divide_length(input).ok());
  EXPECT_EQ(divided(input).cuff.value(), 0);
}

TEST(Length, OneRoundOfRibIsEnoughAndNoneIsNot) {
  // 120 rounds, 8 of them cuff.
  LengthInput input = woman();
  input.toe = Rounds(111);
  EXPECT_EQ(divided(input).spiral.value(), 1);
  input.toe = Rounds(112);
  const Result<SockLength> refused = divide_length(input);
  ASSERT_FALSE(refused.ok());
  ASSERT_EQ(told(refused.problems()), (std::vector<std::string>{"no_room_for_rib@/legHeightMm"}));
  // The leg it names is one that serves.
  input.leg_height = mm(*number_in(refused.problems().front(), "leastMm"));
  EXPECT_EQ(divided(input).spiral.value(), 1);
}

TEST(Length, TwoThousandRoundsAreTheMost) {
  LengthInput input = woman();
  input.gauge = RoundGauge::per_mm(2000.0 / 436.16);
  EXPECT_EQ(divided(input).total.value(), 2000);
  input.gauge = RoundGauge::per_mm(2000.49 / 436.16);
  EXPECT_EQ(divided(input).total.value(), 2000);
  input.gauge = RoundGauge::per_mm(2000.51 / 436.16);
  const Result<SockLength> refused = divide_length(input);
  ASSERT_FALSE(refused.ok());
  ASSERT_EQ(told(refused.problems()), (std::vector<std::string>{"too_many_rounds@/legHeightMm"}));
  EXPECT_EQ(number_in(refused.problems().front(), "rounds"), 2001);
  EXPECT_EQ(number_in(refused.problems().front(), "max"), 2000);
}

TEST(Length, EveryProblemComesAtOnce) {
  LengthInput input = woman();
  input.leg_height = mm(40);
  input.gauge = RoundGauge::per_mm(10);
  input.toe = Rounds(2600);
  const Result<SockLength> refused = divide_length(input);
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(told(refused.problems()),
            (std::vector<std::string>{"leg_too_short@/legHeightMm", "no_room_for_rib@/legHeightMm",
                                      "too_many_rounds@/legHeightMm"}));
}

TEST(Length, TheBackStretchesAndTheFrontBunches) {
  const SockLength sock = divided(woman());
  // Over the heel the way is 246 + 200 = 446 against 436.16 of sock: 9.84/436.16.
  EXPECT_NEAR(sock.back_strain, 0.0225605, 5e-8);
  // In front it is 2 x 119.8835/sqrt(2) = 169.5409 shorter: (446 - 169.5409 - 436.16)/436.16.
  EXPECT_NEAR(sock.front_strain, -0.3661520, 5e-7);
  EXPECT_NEAR(sock.back_strain - sock.front_strain, 169.5409 / 436.16, 1e-6);
}

TEST(Length, WithoutEaseTheBackLiesFlat) {
  LengthInput input = woman();
  input.length_ease = 0;
  EXPECT_NEAR(divided(input).back_strain, 0, 1e-15);
}

}  // namespace
}  // namespace twinround

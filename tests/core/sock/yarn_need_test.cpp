#include "yarn_need.h"

#include <gtest/gtest.h>

#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;

TEST(YarnNeed, AddsUpItsSections) {
  YarnInput input;
  input.loop = mm(20);
  input.cast_on = Stitches(16);
  input.toe_stitches = 564;
  input.spiral_stitches = 3800;
  input.cuff_stitches = 320;
  input.edge_girth = mm(310);
  input.margin = 0.10;
  const YarnNeed need = yarn_need(input);
  EXPECT_NEAR(need.cast_on.mm(), 320, 1e-9);           // 16 x 20
  EXPECT_NEAR(need.toe.mm(), 11280, 1e-9);             // 564 x 20
  EXPECT_NEAR(need.spiral.mm(), 76000, 1e-9);          // 3800 x 20
  EXPECT_NEAR(need.cuff.mm(), 6400, 1e-9);             // 320 x 20
  EXPECT_NEAR(need.bind_off.mm(), 1023, 1e-9);         // 3.3 x 310
  EXPECT_NEAR(need.tails.mm(), 400, 1e-9);             // two of 200
  EXPECT_NEAR(need.sock.mm(), 95423, 1e-8);            // together
  EXPECT_NEAR(need.pair.mm(), 190846, 1e-8);           // two socks
  EXPECT_NEAR(need.with_margin.mm(), 209930.6, 1e-7);  // x 1.1
}

struct Ball {
  double need_m = 0;
  int balls = 0;
  bool just = false;
  double spare_m = 0;
};

TEST(Balls, AreWholeAndJustWithinTwoPercentOfAWholeBall) {
  // Balls of 200 m: 2 % are 4 m, under and over.
  const std::vector<Ball> table = {
      {1, 1, false, 199},
      {4, 1, false, 196},  // a first ball hardly begun is no close thing:
                           // one is needed anyway
      {195.9, 1, false, 4.1},
      {196, 1, true, 4},
      {199.8, 1, true, 0.2},
      {200, 1, true, 0},
      {200.2, 2, true, 199.8},
      {204, 2, true, 196},
      {204.1, 2, false, 195.9},
      {300, 2, false, 100},
      {395.9, 2, false, 4.1},
      {396.1, 2, true, 3.9},
      {403.9, 3, true, 196.1},
      {404.1, 3, false, 195.9},
  };
  for (const Ball& row : table) {
    SCOPED_TRACE(row.need_m);
    const Balls balls = balls_for(Length::from_m(row.need_m), Length::from_m(200));
    EXPECT_EQ(balls.count, row.balls);
    EXPECT_EQ(balls.just, row.just);
    EXPECT_NEAR(balls.spare.m(), row.spare_m, 1e-9);
  }
}

TEST(Balls, ABillionthOverIsNoNewBall) {
  EXPECT_EQ(balls_for(Length::from_m(200 * (1 + 1e-10)), Length::from_m(200)).count, 1);
  EXPECT_EQ(balls_for(Length::from_m(200 * (1 + 1e-8)), Length::from_m(200)).count, 2);
}

TEST(YarnLeft, IsWorthTheRoundsThatLeaveBindOffAndTail) {
  // 40 stitches of 20 mm are 0.8 m a round; 1 m of bind-off and 0.2 of tail are kept back.
  struct Row {
    double left_m = 0;
    int rounds = 0;
  };
  for (const Row& row : std::vector<Row>{
           {0, 0}, {1.19, 0}, {1.2, 0}, {1.99, 0}, {2.0, 1}, {2.79, 1}, {2.8, 2}, {81.2, 100}}) {
    EXPECT_EQ(
        rounds_left(Length::from_m(row.left_m), Length::from_m(1), mm(20), Stitches(40)).value(),
        row.rounds)
        << row.left_m;
  }
}

TEST(YarnLeft, BeginsALastRoundWithExactlyWhatThatTakes) {
  // 40 stitches of 20 mm, 1 m of bind-off, 0.2 of tail.
  const Length last = yarn_of_last_round(Length::from_m(1), mm(20), Stitches(40));
  EXPECT_NEAR(last.m(), 2.0, 1e-12);
  const auto rounds = [](Length left) {
    return rounds_left(left, Length::from_m(1), mm(20), Stitches(40)).value();
  };
  EXPECT_EQ(rounds(last), 1);
  EXPECT_EQ(rounds(last - mm(1)), 0);
}

TEST(YarnStripe, IsItsMetresOverARound) {
  EXPECT_NEAR(stripe_rounds(Length::from_m(4), mm(20), Stitches(40)), 5, 1e-12);
}

TEST(YarnError, AddsInQuadrature) {
  // sqrt(0.0224508^2 + 0.0212857^2 + 0.10^2)
  EXPECT_NEAR(yarn_error(0.0224508, 0.0212857, kGeometryError), 0.1046763, 5e-8);
  EXPECT_NEAR(yarn_error(0.0224508, 0.0212857, kWeighedError), 0.0430943, 5e-8);
  EXPECT_NEAR(yarn_error(0, 0, 0.03), 0.03, 1e-15);
}

TEST(YarnModel, IsTenPercentUnsureByGeometryAndThreeByWeighing) {
  EXPECT_EQ(kGeometryError, 0.10);
  EXPECT_EQ(kWeighedError, 0.03);
}

}  // namespace
}  // namespace twinround

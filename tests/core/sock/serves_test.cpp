#include "serves.h"

#include <gtest/gtest.h>

#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::woman_in_worsted;

// A foot of 250, no ease in length, a leg of 250: a sock of 500.
ServesInput easy() {
  ServesInput input;
  input.foot_length = mm(250);
  input.leg_height = mm(250);
  input.girth_ease = -0.2;
  input.worst_use = 0.5;
  return input;
}

FeetServed served(const ServesInput& input) {
  const std::optional<FeetServed> feet = feet_served(input);
  EXPECT_TRUE(feet.has_value());
  return feet.value_or(FeetServed{});
}

TEST(Serves, FeetWhoseWayIsWithinTheSocksLength) {
  EXPECT_EQ(kLeastLengthShare, 0.95);
  EXPECT_EQ(kMostLengthShare, 1.20);
  EXPECT_NEAR(served(easy()).from.mm(), 225, 1e-9);  // 0.95 x 500 - 250
  ServesInput input = easy();
  input.leg_height = mm(100);  // (1.2 x 350 - 100)
  input.girth_ease = -0.08;    // so that the girths take more, either way
  EXPECT_NEAR(served(input).to.mm(), 320, 1e-9);
  input.length_ease = -0.04;  // (0.95 x 340 - 100)/0.96, (1.2 x 340 - 100)/0.96
  EXPECT_NEAR(served(input).from.mm(), 232.2916667, 1e-6);
  EXPECT_NEAR(served(input).to.mm(), 320.8333333, 1e-6);
}

TEST(Serves, FeetWhoseGirthTheTubeTakes) {
  EXPECT_EQ(kLeastGirthShare, 1.00);
  EXPECT_EQ(kMostGirthShare, 1.40);
  ServesInput input = easy();
  // At -20 % the foot is 1.25 of the tube: up to 1.4 leaves 1.12.
  EXPECT_NEAR(served(input).to.mm(), 280, 1e-9);
  // At -5 % the slimmest is 0.95 of the foot.
  input.girth_ease = -0.05;
  EXPECT_NEAR(served(input).from.mm(), 237.5, 1e-9);
}

TEST(Serves, FeetWhoseHeelAndLegPass) {
  ServesInput input = easy();
  input.worst_use = 0.8;  // 0.85/0.8 of the foot
  EXPECT_NEAR(served(input).to.mm(), 265.625, 1e-9);
}

TEST(Serves, NobodyWhereNotEvenTheFootItWasPlannedFor) {
  struct Row {
    double ease, use;
    bool serves;
  };
  for (const Row& row : std::vector<Row>{{0, 0.5, true},
                                         {0.001, 0.5, false},
                                         {1 / 1.4 - 1, 0.5, true},
                                         {-0.29, 0.5, false},
                                         {-0.1, 0.85, true},
                                         {-0.1, 0.851, false}}) {
    ServesInput input = easy();
    input.girth_ease = row.ease;
    input.worst_use = row.use;
    EXPECT_EQ(feet_served(input).has_value(), row.serves) << row.ease << " " << row.use;
  }
}

// Each end by itself: the foot planned for, grown or shrunk with all its girths, and put to the
// plan's own fit.
TEST(Serves, WhatThePlanSaysHoldsForThatFoot) {
  const PlanRequest request = woman_in_worsted();
  const Plan plan = make_plan(request).value();
  ASSERT_TRUE(plan.serves.has_value());
  const auto fits = [&](Length foot) {
    const double grown = foot / request.foot.length.value();
    const double girth = grown * request.foot.ball_girth.value() / plan.finished_girth;
    const double way = (foot * 0.96 + request.leg_height) / plan.length.length;
    return girth >= 1 && girth <= 1.4 && way >= 0.95 && way <= 1.2 &&
           grown * plan.heel_use <= 0.85 && grown * plan.leg_fit.worst_use <= 0.85;
  };
  const Length hair = mm(1e-6);
  EXPECT_FALSE(fits(plan.serves->from - hair));
  EXPECT_TRUE(fits(plan.serves->from + hair));
  EXPECT_TRUE(fits(plan.serves->to - hair));
  EXPECT_FALSE(fits(plan.serves->to + hair));
}

}  // namespace
}  // namespace twinround

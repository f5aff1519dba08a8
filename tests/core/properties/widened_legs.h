// Legs wide enough that a plan widens for them, and its rounds one by one.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "random_requests.h"

namespace twinround::test {

inline constexpr int kWideLegs = 3000;

// Legs that a tube of the foot's count often does not pass: wide calves, wide ankles, high edges, a
// count of her own.
inline PlanRequest wide_legged(PlanRequest request, Dice& dice) {
  const Length ball = *request.foot.ball_girth;
  if (dice.chance(0.8)) request.foot.calf_girth = ball * dice.between(1.4, 2.6);
  if (dice.chance(0.3)) request.foot.ankle_girth = ball * dice.between(0.9, 2.0);
  if (dice.chance(0.7)) request.leg_height = *request.foot.length * dice.between(0.8, 1.9);
  if (dice.chance(0.3)) request.stitch_count = 2 * request.rib.repeat() * dice.whole(1, 8);
  return request;
}

// check(request, plan) for each wide leg that is widened; says how many were.
template <class Check>
void for_widened_legs(const Check& check) {
  int widened = 0;
  for_random_requests(kWideLegs, [&](const PlanRequest& random, Dice& dice) {
    const PlanRequest request = wide_legged(random, dice);
    const Result<Plan> result = make_plan(request);
    if (!result.ok() || result.value().widening.empty()) return;
    ++widened;
    SCOPED_TRACE("calf " + std::to_string(result.value().foot.calf_girth.value.mm()) + ", ankle " +
                 std::to_string(result.value().foot.ankle_girth.value.mm()) + ", leg " +
                 std::to_string(request.leg_height.mm()) + ", " +
                 std::to_string(result.value().stitches.value()) + " stitches, " +
                 std::to_string(result.value().widening.size()) + " stages");
    check(request, result.value());
  });
  testing::Test::RecordProperty("widened", std::to_string(widened));
  if (std::getenv("TWINROUND_SEED") == nullptr && !testing::Test::HasFailure()) {
    EXPECT_GT(widened, kWideLegs / 10);
  }
}

struct RoundSeen {
  Section section = Section::toe;
  int stitches = 0;
  RoundLine line;
  RoundLine second_line;
};

inline std::vector<RoundSeen> one_by_one(const Plan& plan) {
  std::vector<RoundSeen> rounds;
  for (const RoundSpan& span : plan.rounds) {
    const RoundSeen seen{span.section, span.stitches,
                         plan.lines[static_cast<std::size_t>(span.line)],
                         plan.lines[static_cast<std::size_t>(span.second_line)]};
    rounds.insert(rounds.end(), static_cast<std::size_t>(span.rounds), seen);
  }
  return rounds;
}

inline const WideningStage* stage_at(const Plan& plan, int rib_round) {
  for (const WideningStage& stage : plan.widening) {
    if (stage.round == rib_round) return &stage;
  }
  return nullptr;
}

}  // namespace twinround::test

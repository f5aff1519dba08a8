// Random requests of the kinds that knitters make, and some that they should not. Each is made from
// its own number, so that a failure can be looked at alone; the numbers start at TWINROUND_SEED
// where that is set.
#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <random>
#include <string>

#include "../sock/sock_examples.h"
#include "plan.h"

namespace twinround::test {

inline constexpr std::uint32_t kUsualSeed = 19180101;

inline std::uint32_t first_seed() {
  const char* told = std::getenv("TWINROUND_SEED");
  if (told == nullptr) return kUsualSeed;
  return static_cast<std::uint32_t>(std::strtoul(told, nullptr, 10));
}

// Draws the same on every platform: the standard's distributions do not.
class Dice {
 public:
  explicit Dice(std::uint32_t seed) : engine_(seed) {}

  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_()) / 4294967296.0);
  }
  int whole(int low, int high) {
    return low + static_cast<int>(engine_() % static_cast<std::uint32_t>(high - low + 1));
  }
  bool chance(double share) { return between(0, 1) < share; }

 private:
  std::mt19937 engine_;
};

inline std::vector<Reading> random_readings(Dice& dice) {
  const double stitches_per_mm = dice.between(0.06, 0.42);
  const double rounds_per_stitch = dice.between(1.1, 1.7);
  const int n = dice.chance(0.7) ? 1 : dice.whole(2, 12);
  std::vector<Reading> readings;
  for (int i = 0; i < n; ++i) {
    const double width = dice.chance(0.5) ? 101.6 : dice.between(30, 250);
    // Quarters of a stitch, as counted.
    const double stitches =
        std::floor(4 * width * stitches_per_mm * dice.between(0.97, 1.03) + 1) / 4;
    const double rounds = std::floor(4 * stitches * rounds_per_stitch + 1) / 4;
    const bool rounds_too = i == 0 || dice.chance(0.6);
    readings.push_back(rounds_too ? reading(stitches, width, rounds, width)
                                  : reading_across(stitches, width));
  }
  return readings;
}

inline FootInput random_foot(Dice& dice) {
  FootInput foot;
  const double length = dice.between(100, 320);
  const double ball = length * dice.between(0.85, 1.02);
  foot.length = mm(length);
  foot.ball_girth = mm(ball);
  if (dice.chance(0.6)) foot.heel_ankle_girth = mm(ball * dice.between(1.25, 1.50));
  if (dice.chance(0.4)) foot.ankle_girth = mm(ball * dice.between(0.85, 1.05));
  if (dice.chance(0.4)) foot.calf_girth = mm(ball * dice.between(1.3, 1.9));
  return foot;
}

inline Rib random_rib(Dice& dice) {
  const int widest = dice.chance(0.8) ? 4 : 12;
  Rib rib;
  rib.knit = dice.whole(1, widest);
  rib.purl = dice.whole(1, widest);
  rib.rounds_per_shift = dice.whole(0, dice.chance(0.8) ? 6 : 40);
  rib.lean = static_cast<Lean>(dice.whole(0, 2));
  return rib;
}

inline PlanRequest random_request(Dice& dice) {
  PlanRequest request;
  request.foot = random_foot(dice);
  if (dice.chance(0.9)) {
    request.swatch.readings = random_readings(dice);
    request.swatch.washed = dice.chance(0.7);
    if (dice.chance(0.2)) request.swatch.fabric = Fabric::rib;
    if (dice.chance(0.1)) {
      const Reading& first = request.swatch.readings.front();
      request.swatch.stretched_width = first.width * dice.between(0.95, 2.4);
    }
    if (dice.chance(0.2)) {
      request.swatch.mass = Mass::from_g(dice.between(2, 40));
      request.swatch.mass_stitches = dice.between(200, 4000);
    }
  }
  if (dice.chance(0.5) || request.swatch.readings.empty()) request.yarn.category = dice.whole(0, 7);
  if (dice.chance(0.5)) {
    request.yarn.ball_mass = Mass::from_g(dice.chance(0.5) ? 50 : 100);
    request.yarn.ball_length = Length::from_m(dice.between(40, 450));
  }
  request.rib = random_rib(dice);
  request.leg_height = mm(dice.between(0.35, 1.6) * request.foot.length->mm());
  if (dice.chance(0.3)) request.cuff = mm(dice.between(0, 80));
  if (dice.chance(0.3)) request.girth_ease = dice.between(-0.30, 0.10);
  if (dice.chance(0.3)) request.length_ease = dice.between(-0.10, 0.10);
  if (dice.chance(0.3)) request.toe_share = dice.between(0.05, 0.50);
  if (dice.chance(0.3)) request.tip_share = dice.between(0.10, 1.0);
  if (dice.chance(0.4)) {
    request.toe_shape = dice.chance(0.5) ? ToeShape::even : ToeShape::left_right;
  }
  if (dice.chance(0.1)) request.stitch_count = 2 * dice.whole(4, 60);
  if (dice.chance(0.2)) request.yarn_margin = dice.between(0, 0.5);
  return request;
}

// What to retype to see a failing request again.
inline std::string described(const PlanRequest& request) {
  std::string text = "k" + std::to_string(request.rib.knit) + " p" +
                     std::to_string(request.rib.purl) + " every " +
                     std::to_string(request.rib.rounds_per_shift) + " lean " +
                     std::to_string(static_cast<int>(request.rib.lean)) + ", foot " +
                     std::to_string(request.foot.length->mm()) + " ball " +
                     std::to_string(request.foot.ball_girth->mm()) + " leg " +
                     std::to_string(request.leg_height.mm());
  if (request.foot.heel_ankle_girth) {
    text += " heel " + std::to_string(request.foot.heel_ankle_girth->mm());
  }
  for (const Reading& reading : request.swatch.readings) {
    text += ", " + std::to_string(reading.stitches) + " over " + std::to_string(reading.width.mm());
    if (reading.rounds) text += " x " + std::to_string(*reading.rounds);
  }
  return text;
}

// Calls check(request, dice) for `times` requests, each with the dice it was thrown with, so that a
// check can throw on; says the seed and the request with every failure.
template <class Check>
void for_random_requests(int times, const Check& check) {
  const std::uint32_t first = first_seed();
  testing::Test::RecordProperty("seed", std::to_string(first));
  for (int i = 0; i < times; ++i) {
    const std::uint32_t seed = first + static_cast<std::uint32_t>(i);
    Dice dice(seed);
    const PlanRequest request = random_request(dice);
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(seed) + ": " + described(request));
    check(request, dice);
    if (testing::Test::HasFailure()) return;  // the first one tells enough
  }
}

// The same for those requests that have a plan; at least a third of them must.
template <class Check>
void for_random_plans(int times, const Check& check) {
  int plans = 0;
  for_random_requests(times, [&](const PlanRequest& request, Dice& dice) {
    const Result<Plan> result = make_plan(request);
    if (!result.ok()) return;
    ++plans;
    check(request, result.value(), dice);
  });
  // A run of one, to look at a failure, need not have any.
  if (std::getenv("TWINROUND_SEED") == nullptr && !testing::Test::HasFailure()) {
    EXPECT_GE(plans, times / 3);
  }
}

}  // namespace twinround::test

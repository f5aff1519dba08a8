// A better measurement never makes a figure less sure.
#include <gtest/gtest.h>

#include "random_requests.h"

namespace twinround {
namespace {

using test::Dice;
using test::for_random_requests;

constexpr int kTimes = 2000;
constexpr double kTie = 1e-12;

void expect_no_less_sure(const Plan& before, const Plan& after) {
  ASSERT_LE(after.gauge.stitches_error, before.gauge.stitches_error + kTie);
  ASSERT_LE(after.gauge.rounds_error, before.gauge.rounds_error + kTie);
  ASSERT_LE(after.girth_error, before.girth_error + kTie);
  ASSERT_LE(after.rest_girth_error, before.rest_girth_error + kTie);
  ASSERT_LE(after.heel_use_error, before.heel_use_error + kTie);
  ASSERT_LE(after.yarn.relative_error, before.yarn.relative_error + kTie);
  ASSERT_LE(after.time_error, before.time_error + kTie);
}

// better(request, dice) betters a request's measuring, or says that it cannot.
template <class Better>
void for_bettered_plans(const Better& better) {
  int compared = 0;
  for_random_requests(kTimes, [&](const PlanRequest& request, Dice& dice) {
    PlanRequest bettered = request;
    if (!better(bettered, dice)) return;
    const Result<Plan> before = make_plan(request);
    const Result<Plan> after = make_plan(bettered);
    if (!before.ok() || !after.ok()) return;
    ++compared;
    expect_no_less_sure(before.value(), after.value());
  });
  EXPECT_GT(compared, kTimes / 6);
}

TEST(APreciserReading, NeverWidensAnError) {
  // The same gauges read over more stitches: the ends weigh less.
  for_bettered_plans([](PlanRequest& request, Dice& dice) {
    const double factor = dice.between(1.0, 4.0);
    for (Reading& reading : request.swatch.readings) {
      reading.stitches *= factor;
      reading.width = factor * reading.width;
      if (reading.rounds) reading.rounds = *reading.rounds * factor;
      if (reading.height) reading.height = factor * *reading.height;
    }
    // The stretched width is of the first reading.
    if (request.swatch.stretched_width) {
      request.swatch.stretched_width = factor * *request.swatch.stretched_width;
    }
    return !request.swatch.readings.empty();
  });
}

TEST(TheSameReadingAgain, NeverWidensAnError) {
  // All the readings once more, as if the swatch had been measured twice and agreed with itself.
  for_bettered_plans([](PlanRequest& request, Dice&) {
    const std::vector<Reading> once = request.swatch.readings;
    if (once.empty() || once.size() > 6) return false;
    request.swatch.readings.insert(request.swatch.readings.end(), once.begin(), once.end());
    return true;
  });
}

TEST(AWashedSwatch, NeverWidensAnError) {
  for_bettered_plans([](PlanRequest& request, Dice&) {
    const bool was_washed = request.swatch.washed;
    request.swatch.washed = true;
    return !was_washed || !request.swatch.readings.empty();
  });
}

TEST(AWeighing, NeverWidensTheYarnsError) {
  int compared = 0;
  for_random_requests(kTimes, [&](PlanRequest request, Dice& dice) {
    if (request.swatch.readings.empty()) return;
    request.swatch.mass.reset();
    request.swatch.mass_stitches.reset();
    request.yarn.ball_mass = Mass::from_g(100);
    request.yarn.ball_length = Length::from_m(dice.between(100, 450));
    PlanRequest weighed = request;
    weighed.swatch.mass = Mass::from_g(dice.between(2, 40));
    weighed.swatch.mass_stitches = dice.between(200, 4000);
    const Result<Plan> before = make_plan(request);
    const Result<Plan> after = make_plan(weighed);
    if (!before.ok() || !after.ok()) return;
    ++compared;
    ASSERT_LE(after.value().yarn.relative_error, before.value().yarn.relative_error);
    ASSERT_LE(after.value().heel_use_error, before.value().heel_use_error);
  });
  EXPECT_GT(compared, kTimes / 6);
}

TEST(ATimedRound, NeverWidensTheHoursError) {
  for_bettered_plans([](PlanRequest& request, Dice& dice) {
    request.stitches_per_minute = dice.between(16, 60);
    return true;
  });
}

}  // namespace
}  // namespace twinround

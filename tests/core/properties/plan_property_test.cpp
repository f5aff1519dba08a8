// What holds for every plan, whatever was asked.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include "random_requests.h"
#include "stitch_count.h"
#include "tube.h"

namespace twinround {
namespace {

using test::Dice;
using test::find_code;
using test::for_random_plans;
using test::for_random_requests;
using test::number_in;
using test::says;

constexpr int kTimes = 2000;

TEST(EveryPlan, IsWholeOrItsProblemsAre) {
  int refused = 0;
  for_random_requests(kTimes, [&](const PlanRequest& request, Dice&) {
    const Result<Plan> result = make_plan(request);
    if (result.ok()) {
      const Plan& plan = result.value();
      ASSERT_TRUE(result.problems().empty());
      ASSERT_FALSE(plan.choices.empty());
      ASSERT_FALSE(plan.lines.empty());
      ASSERT_FALSE(plan.rounds.empty());
      ASSERT_FALSE(plan.working.empty());
      return;
    }
    ++refused;
    ASSERT_FALSE(result.problems().empty());
    for (const Problem& problem : result.problems()) {
      ASSERT_EQ(problem.field.front(), '/');
      ASSERT_NE(problem.code, "");
      ASSERT_NE(problem.message, "");
    }
  });
  EXPECT_GT(refused, 0);  // or nothing of this was tried
}

TEST(EveryPlan, IsTriedOnInTheRib) {
  for_random_plans(kTimes, [](const PlanRequest&, const Plan& plan, Dice&) {
    ASSERT_GT(plan.length.try_on.value(), static_cast<int>(plan.toe.counts.size()));
    ASSERT_LE(plan.length.try_on, plan.length.total - plan.length.cuff);
  });
}

TEST(EveryPlan, ServesItsOwnFootOrNobody) {
  int served = 0;
  for_random_plans(kTimes, [&](const PlanRequest&, const Plan& plan, Dice&) {
    const double foot = plan.foot.length.value.mm();
    const bool is_within = plan.girth_ease <= 1e-9 && plan.girth_ease >= 1 / 1.4 - 1 - 1e-9 &&
                           plan.heel_use <= 0.85 + 1e-9 && plan.leg_fit.worst_use <= 0.85 + 1e-9;
    ASSERT_EQ(plan.serves.has_value(), is_within);
    if (!plan.serves) return;
    ++served;
    ASSERT_LE(plan.serves->from.mm(), foot + 1e-9);
    ASSERT_GE(plan.serves->to.mm(), foot - 1e-9);
    ASSERT_GT(plan.serves->from.mm(), 0);
  });
  EXPECT_GT(served, 0);
}

TEST(EveryPlan, IsMadeOfFiniteFigures) {
  for_random_plans(kTimes, [](const PlanRequest&, const Plan& plan, Dice&) {
    for (const double figure : {plan.gauge.stitches.per_mm(),
                                plan.gauge.rounds.per_mm(),
                                plan.gauge.stitches_error,
                                plan.gauge.rounds_error,
                                plan.finished_girth.mm(),
                                plan.rest_girth.mm(),
                                plan.widest_girth.mm(),
                                plan.heel_use,
                                plan.length.length.mm(),
                                plan.leg_fit.worst_use,
                                plan.yarn.loop.mm(),
                                plan.yarn.need.with_margin.m(),
                                plan.yarn.pair_mass->g(),
                                plan.yarn.relative_error,
                                plan.needle.cable_least.mm(),
                                plan.time.minutes(),
                                plan.girth_error,
                                plan.heel_use_error,
                                plan.time_error,
                                plan.yarn.tex}) {
      ASSERT_TRUE(std::isfinite(figure));
      ASSERT_GT(figure, 0);
    }
    ASSERT_GT(plan.girth_ease, -1);
    ASSERT_TRUE(std::isfinite(plan.length.back_strain) && std::isfinite(plan.length.front_strain));
  });
}

TEST(EveryPlan, HasAnEvenCountThatIsAMultipleOfTheRepeat) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    const int n = plan.stitches.value();
    ASSERT_EQ(n % 2, 0);
    ASSERT_EQ(n % (request.rib.knit + request.rib.purl), 0);
    ASSERT_GE(n, 8);
    ASSERT_LE(n, 400);
    ASSERT_EQ(plan.halves_alike, n / 2 % (request.rib.knit + request.rib.purl) == 0);
  });
}

TEST(EveryPlan, AdvisesACountThatGoesOverTheHeel) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    if (!plan.advised) return;
    const Length heel = request.foot.heel_ankle_girth.value_or(1.45 * *request.foot.ball_girth);
    const double widest_stitch = plan.widest_girth.mm() / plan.stitches.value();
    ASSERT_LE(heel.mm() / (plan.advised->value() * widest_stitch), 0.85 + 1e-9);
    ASSERT_EQ(plan.stitches.value(), request.stitch_count.value_or(plan.advised->value()));
  });
}

TEST(EveryPlan, ChoosesAmongAscendingCountsWithItsOwn) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    ASSERT_LE(plan.choices.size(), 5U);
    int before = 0;
    bool own = false;
    for (const Choice& choice : plan.choices) {
      ASSERT_GT(choice.stitches.value(), before);
      ASSERT_TRUE(is_count(choice.stitches.value(), request.rib.repeat()));
      before = choice.stitches.value();
      if (choice.stitches != plan.stitches) continue;
      own = true;
      ASSERT_EQ(choice.ease, plan.girth_ease);
      ASSERT_EQ(choice.heel_use, plan.heel_use);
      ASSERT_EQ(choice.yarn_pair, plan.yarn.need.pair);
      ASSERT_EQ(choice.time, plan.time);
    }
    ASSERT_TRUE(own);
  });
}

TEST(EveryPlan, SaysAnEaseThatIsOff) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    const double ease =
        plan.stitches.value() / (request.foot.ball_girth->mm() * plan.gauge.stitches.per_mm()) - 1;
    ASSERT_NEAR(plan.girth_ease, ease, 1e-12);
    const bool outside = ease < -0.20 - 1e-9 || ease > -0.02 + 1e-9;
    const bool off = std::abs(ease - request.girth_ease) > 0.04 + 1e-9;
    ASSERT_EQ(says(plan.cautions, "ease_outside"), outside);
    ASSERT_EQ(says(plan.cautions, "ease_off"), off && !outside);
  });
}

TEST(EveryPlan, WidensALegThatDoesNotPassAndSaysSo) {
  int widened = 0;
  for_random_plans(kTimes, [&](const PlanRequest& request, const Plan& plan, Dice&) {
    // Straight from ankle to calf: looked at every millimetre.
    const double foot = request.foot.length->mm();
    const double ankle = plan.foot.ankle_girth.value.mm();
    const double calf = plan.foot.calf_girth.value.mm();
    double widest = 0;
    for (double height = 0; height <= request.leg_height.mm(); height += 1) {
      const double way = std::clamp((height / foot - 0.45) / (1.38 - 0.45), 0.0, 1.0);
      widest = std::max(widest, ankle + way * (calf - ankle));
    }
    ASSERT_NEAR(plan.leg_fit.widest_girth.mm(), widest, 1 + 0.02 * widest);
    ASSERT_GE(plan.leg_fit.widest_girth.mm(), widest - 1e-9);
    const bool passes = plan.leg_fit.widest_girth.mm() <= (0.85 + 1e-9) * plan.widest_girth.mm();
    ASSERT_EQ(says(plan.cautions, "leg_widened"), !passes);
    ASSERT_EQ(plan.widening.empty(), passes);
    ASSERT_EQ(plan.larger_needle.has_value(), !passes);
    ASSERT_EQ(plan.edge_stitches > plan.stitches, !passes);
    // And is then as wide at the top as the widest place needs.
    const double edge_mm =
        plan.edge_stitches.value() * plan.widest_girth.mm() / plan.stitches.value();
    ASSERT_LE(plan.leg_fit.widest_girth.mm(), (0.85 + 1e-9) * edge_mm);
    if (passes) return;
    ++widened;
    const Problem said = *find_code(plan.cautions, "leg_widened");
    ASSERT_EQ(number_in(said, "from"), plan.stitches.value());
    ASSERT_EQ(number_in(said, "to"), plan.edge_stitches.value());
    // From there on the foot's own count would use more than 0.85, and below it would not.
    const double from = *number_in(said, "heightMm");
    const auto own_use = [&](double height) {
      const double way = std::clamp((height / foot - 0.45) / (1.38 - 0.45), 0.0, 1.0);
      return (ankle + way * (calf - ankle)) / plan.widest_girth.mm();
    };
    ASSERT_GE(from, 0);
    ASSERT_GE(own_use(from), 0.85 - 1e-9);
    ASSERT_LE(own_use(from), from > 0 ? 0.85 + 1e-9 : 100);
  });
  EXPECT_GT(widened, 0);
}

TEST(EveryPlan, NeedsNoWideningOnTheCountThatItWasWidenedTo) {
  int tried = 0;
  for_random_plans(kTimes, [&](const PlanRequest& request, const Plan& plan, Dice&) {
    if (plan.widening.empty()) return;
    PlanRequest wider = request;
    const int repeat = request.rib.knit + request.rib.purl;
    const int step = repeat % 2 == 0 ? repeat : 2 * repeat;
    wider.stitch_count = step * ((plan.edge_stitches.value() + step - 1) / step);
    const Result<Plan> result = make_plan(wider);
    if (!result.ok()) return;  // its longer toe may leave no room
    ++tried;
    ASSERT_FALSE(says(result.value().cautions, "leg_widened"));
  });
  EXPECT_GT(tried, 0);
}

TEST(EveryRefusal, NamesALegThatWouldDo) {
  int tried = 0;
  for_random_requests(kTimes, [&](const PlanRequest& request, Dice&) {
    const Result<Plan> result = make_plan(request);
    const auto problem = find_code(result.problems(), "leg_too_short");
    if (!problem) return;
    ++tried;
    PlanRequest longer = request;
    longer.leg_height = test::mm(*number_in(*problem, "leastMm"));
    ASSERT_GT(longer.leg_height, request.leg_height);
    ASSERT_FALSE(says(make_plan(longer).problems(), "leg_too_short"));
    longer.leg_height = longer.leg_height - test::mm(0.001);
    ASSERT_TRUE(says(make_plan(longer).problems(), "leg_too_short"));
  });
  EXPECT_GT(tried, 0);
}

}  // namespace
}  // namespace twinround

// What more of one thing does to another, all else equal.
#include <gtest/gtest.h>

#include <optional>

#include "random_requests.h"
#include "stitch_count.h"

namespace twinround {
namespace {

using test::Dice;
using test::for_random_requests;

constexpr int kTimes = 2000;

void scale(std::optional<Length>& length, double factor) {
  if (length) length = factor * *length;
}

// Both of two requests, where both have a plan; how many had.
struct Compared {
  int pairs = 0;

  template <class Check>
  void plans(const PlanRequest& one, const PlanRequest& other, const Check& check) {
    const Result<Plan> before = make_plan(one);
    const Result<Plan> after = make_plan(other);
    if (!before.ok() || !after.ok()) return;
    ++pairs;
    check(before.value(), after.value());
  }
};

TEST(MoreGirth, NeverTakesFewerStitches) {
  Compared compared;
  for_random_requests(kTimes, [&](PlanRequest request, Dice& dice) {
    request.stitch_count.reset();
    PlanRequest wider = request;
    const double factor = dice.between(1.0, 1.3);
    scale(wider.foot.ball_girth, factor);
    scale(wider.foot.heel_ankle_girth, factor);
    scale(wider.foot.ankle_girth, factor);
    scale(wider.foot.calf_girth, factor);
    compared.plans(request, wider, [](const Plan& before, const Plan& after) {
      ASSERT_GE(after.stitches, before.stitches);
    });
  });
  EXPECT_GT(compared.pairs, kTimes / 4);
}

TEST(ALargerHeel, NeverTakesFewerStitches) {
  Compared compared;
  for_random_requests(kTimes, [&](PlanRequest request, Dice& dice) {
    request.stitch_count.reset();
    request.foot.heel_ankle_girth = 1.30 * *request.foot.ball_girth;
    // A leg no wider than the heel: where the tube passes that, it is never widened, and the heel
    // alone is told apart. (More stitches may spare a widening, and so yarn.)
    request.foot.ankle_girth = 0.95 * *request.foot.ball_girth;
    request.foot.calf_girth = 1.25 * *request.foot.ball_girth;
    PlanRequest larger = request;
    scale(larger.foot.heel_ankle_girth, dice.between(1.0, 1.4));
    compared.plans(request, larger, [](const Plan& before, const Plan& after) {
      ASSERT_GE(after.stitches, before.stitches);
      ASSERT_GE(after.yarn.need.pair, before.yarn.need.pair);
      ASSERT_TRUE(before.widening.empty() && after.widening.empty());
    });
  });
  EXPECT_GT(compared.pairs, kTimes / 4);
}

TEST(AWash, NeverMovesACount) {
  for_random_requests(kTimes, [&](PlanRequest request, Dice&) {
    request.swatch.washed = true;
    PlanRequest unwashed = request;
    unwashed.swatch.washed = false;
    const Result<Plan> one = make_plan(request);
    const Result<Plan> other = make_plan(unwashed);
    ASSERT_EQ(one.ok(), other.ok());
    if (!one.ok()) return;
    ASSERT_EQ(one.value().stitches, other.value().stitches);
    ASSERT_EQ(one.value().toe.counts, other.value().toe.counts);
    ASSERT_EQ(one.value().length.total, other.value().length.total);
    ASSERT_EQ(one.value().heel_use, other.value().heel_use);
    ASSERT_EQ(one.value().edge_stitches, other.value().edge_stitches);
    ASSERT_EQ(one.value().widening_rounds, other.value().widening_rounds);
    // But it is less sure.
    ASSERT_GE(other.value().gauge.stitches_error, one.value().gauge.stitches_error);
    ASSERT_GE(other.value().yarn.relative_error, one.value().yarn.relative_error);
  });
}

// The same fabric finer: as many more stitches as rounds. Ribs up to k4 p4, no weighed swatch, no
// stretched one.
PlanRequest plain_swatch(PlanRequest request) {
  request.stitch_count.reset();
  request.swatch.mass.reset();
  request.swatch.stretched_width.reset();
  request.rib.knit = 1 + (request.rib.knit - 1) % 4;
  request.rib.purl = 1 + (request.rib.purl - 1) % 4;
  return request;
}

PlanRequest finer_by(PlanRequest request, double factor) {
  for (Reading& reading : request.swatch.readings) {
    reading.stitches *= factor;
    if (reading.rounds) reading.rounds = *reading.rounds * factor;
  }
  return request;
}

TEST(AFinerGauge, NeverTakesFewerStitchesOrRounds) {
  Compared compared;
  for_random_requests(kTimes, [&](const PlanRequest& asked, Dice& dice) {
    const PlanRequest request = plain_swatch(asked);
    compared.plans(request, finer_by(request, dice.between(1.0, 2.0)),
                   [](const Plan& before, const Plan& after) {
                     ASSERT_GE(after.stitches, before.stitches);
                     ASSERT_GE(after.length.total, before.length.total);
                   });
  });
  EXPECT_GT(compared.pairs, kTimes / 4);
}

TEST(AFinerGauge, NeverTakesLessYarn) {
  // Yarn goes as stitches x rounds x loop, so as the gauge, but for the rounding of the count, one
  // step of up to 2 x 7 stitches: from 1.5 times finer the step no longer outweighs it on a count
  // of three steps or more.
  Compared compared;
  for_random_requests(kTimes, [&](const PlanRequest& asked, Dice& dice) {
    const PlanRequest request = plain_swatch(asked);
    compared.plans(request, finer_by(request, dice.between(1.5, 2.2)),
                   [](const Plan& before, const Plan& after) {
                     const int step = count_step(before.rib.repeat());
                     if (before.stitches.value() < 3 * step) return;
                     ASSERT_GE(after.yarn.need.pair, before.yarn.need.pair);
                   });
  });
  EXPECT_GT(compared.pairs, kTimes / 5);
}

TEST(AFinerGauge, OfTheSameCountTakesAlmostTheSameYarn) {
  // A little finer, the count may stand while each loop is shorter and the rounds come in whole
  // ones: the yarn may then fall, by less than one round's worth and the toe's.
  Compared compared;
  for_random_requests(kTimes, [&](const PlanRequest& asked, Dice& dice) {
    const PlanRequest request = plain_swatch(asked);
    compared.plans(request, finer_by(request, dice.between(1.0, 1.1)),
                   [](const Plan& before, const Plan& after) {
                     if (after.stitches != before.stitches) return;
                     const Length round = before.yarn.loop * before.stitches.value();
                     ASSERT_GE(after.yarn.need.sock + 3.0 * round, before.yarn.need.sock);
                   });
  });
  EXPECT_GT(compared.pairs, kTimes / 4);
}

TEST(ALongerLeg, NeverTakesLessYarnOrFewerRounds) {
  Compared compared;
  for_random_requests(kTimes, [&](const PlanRequest& request, Dice& dice) {
    PlanRequest longer = request;
    longer.leg_height = request.leg_height * dice.between(1.0, 1.5);
    compared.plans(request, longer, [](const Plan& before, const Plan& after) {
      ASSERT_EQ(after.stitches, before.stitches);
      ASSERT_GE(after.length.total, before.length.total);
      ASSERT_GE(after.yarn.need.pair, before.yarn.need.pair);
    });
  });
  EXPECT_GT(compared.pairs, kTimes / 4);
}

}  // namespace
}  // namespace twinround

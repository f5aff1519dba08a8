#include "odd.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "../properties/random_requests.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::planned;
using test::with_swatch;
using test::woman_in_worsted;

using Codes = std::vector<std::string>;

std::vector<Oddity> odd_of(const PlanRequest& request, const InHand& in_hand = {}) {
  return oddities(request, planned(request), in_hand);
}

Codes codes_of(const std::vector<Oddity>& odd) {
  Codes codes;
  for (const Oddity& one : odd) codes.push_back(one.what.code);
  return codes;
}

const Oddity* find(const std::vector<Oddity>& odd, const std::string& code) {
  for (const Oddity& one : odd) {
    if (one.what.code == code) return &one;
  }
  return nullptr;
}

bool says(const PlanRequest& request, const std::string& code, const InHand& in_hand = {}) {
  return find(odd_of(request, in_hand), code) != nullptr;
}

TEST(Odd, OfASockInOrderIsADoubtAtMost) {
  // The usual example: only that its swatch is flat.
  EXPECT_EQ(codes_of(odd_of(woman_in_worsted())), Codes{"flat_swatch"});
  EXPECT_EQ(odd_of(woman_in_worsted()).front().harm, Harm::doubt);
}

TEST(Odd, PutsTheBodyBeforeTheYarnAndTheYarnBeforeTheSock) {
  // 32 stitches do not go over the heel, are far too tight, and 20 m are no pair.
  PlanRequest request = with_swatch(woman_in_worsted(), 24, 33, 101.6);
  request.stitch_count = 32;
  request.swatch.washed = false;
  InHand in_hand;
  in_hand.balls = 0.1;
  const std::vector<Oddity> odd = odd_of(request, in_hand);
  const Codes codes = codes_of(odd);
  EXPECT_EQ(codes.front(), "heel_will_not_pass");
  const auto place = [&](const char* code) {
    return std::find(codes.begin(), codes.end(), code) - codes.begin();
  };
  EXPECT_LT(place("ease_outside"), place("yarn_short"));
  EXPECT_LT(place("yarn_short"), place("gauge_dense"));
  EXPECT_LT(place("gauge_dense"), place("firm_fabric"));
  EXPECT_LT(place("firm_fabric"), place("unwashed_swatch"));
  EXPECT_LT(place("unwashed_swatch"), static_cast<std::ptrdiff_t>(codes.size()));
  EXPECT_EQ(find(odd, "ease_outside")->harm, Harm::body);
}

TEST(Odd, ATubeLargerThanItsFootIsTheSocksHarmAndNotTheBodys) {
  PlanRequest large = woman_in_worsted();
  large.stitch_count = 48;  // 243.8 mm round a foot of 228
  EXPECT_EQ(find(odd_of(large), "ease_outside")->harm, Harm::sock);
  // Nor does one press that is hardly smaller: 44 st are 223.5 mm, 1.1 % less than 226.
  large.stitch_count = 44;
  large.foot.ball_girth = mm(226);
  EXPECT_EQ(find(odd_of(large), "ease_outside")->harm, Harm::sock);
}

TEST(Odd, ASockMadeWiderForItsHeelIsToldByTheHeelAlone) {
  // 40 st of 9.977 mm pass 0.85 x 399.1 = 339.2 mm; a heel of 345 moves them to 44.
  PlanRequest request = woman_in_worsted();
  request.foot.heel_ankle_girth = mm(345);
  const std::vector<Oddity> odd = odd_of(request);
  ASSERT_TRUE(find(odd, "heel_moved_count"));
  EXPECT_EQ(find(odd, "heel_moved_count")->harm, Harm::sock);
  EXPECT_FALSE(find(odd, "ease_off"));
}

TEST(Odd, ALegThatStretchesTheSockFarIsTold) {
  // By hand: a stitch goes l/2 = 9.977 mm wide, 40 of them 399.1; 0.75 of that is 299.3. Level at
  // the calf's girth above 1.38 x 246 = 339.5 mm; the ankle as wide makes it level all the way.
  PlanRequest request = woman_in_worsted();
  request.foot.ankle_girth = request.foot.calf_girth = mm(299);
  EXPECT_FALSE(says(request, "tight_on_leg"));
  request.foot.ankle_girth = request.foot.calf_girth = mm(300);
  const std::vector<Oddity> odd = odd_of(request);
  ASSERT_TRUE(find(odd, "tight_on_leg"));
  EXPECT_EQ(odd.front().what.code, "tight_on_leg");
  EXPECT_EQ(odd.front().harm, Harm::body);
  EXPECT_NEAR(*test::number_in(odd.front().what, "use"), 300 / 399.1, 1e-3);
  EXPECT_EQ(test::word_in(odd.front().what, "girth"), "measured");
}

TEST(Odd, YarnInHandIsHeldAgainstThePairAndItsMargin) {
  // 200 m a ball; the pair takes what its plan says, a tenth more with margin.
  const PlanRequest request = woman_in_worsted();
  const YarnNeed need = planned(request).yarn.need;
  const double pair = need.pair.m() / 200;
  const double margin = need.with_margin.m() / 200;
  const auto with_balls = [&](double balls) {
    InHand in_hand;
    in_hand.balls = balls;
    return codes_of(odd_of(request, in_hand)).front();
  };
  EXPECT_EQ(with_balls(pair - 1e-6), "yarn_short");
  EXPECT_EQ(with_balls(pair + 1e-6), "margin_short");
  EXPECT_EQ(with_balls(margin - 1e-6), "margin_short");
  EXPECT_EQ(with_balls(margin + 1e-6), "flat_swatch");
}

TEST(Odd, YarnInHandIsWeighedOrCounted) {
  // 100 g are 200 m: 90 g are 180 m, whatever number of balls they are.
  InHand weighed;
  weighed.mass = Mass::from_g(90);
  weighed.balls = 9;
  const std::vector<Oddity> odd = odd_of(woman_in_worsted(), weighed);
  EXPECT_EQ(odd.front().what.code, "yarn_short");
  EXPECT_NEAR(*test::number_in(odd.front().what, "haveM"), 180, 1e-9);
  EXPECT_EQ(odd.front().what.field, "/inHand/g");
  InHand counted;
  counted.balls = 2;
  PlanRequest unlabelled = woman_in_worsted();
  unlabelled.yarn.ball_mass.reset();
  unlabelled.yarn.ball_length.reset();
  EXPECT_TRUE(says(unlabelled, "hand_needs_ball", counted));
  EXPECT_FALSE(says(unlabelled, "hand_needs_ball"));
}

TEST(Odd, AGaugeIsHeldAgainstItsCategoryGiveOrTakeItsOwnError) {
  // Category 4 is 16 to 20 over 4 in. One reading of s stitches is off by 2 % of them and a quarter
  // stitch at each end: sqrt((0.02 s)^2 + 0.204^2), 0.457 at 20.46 and 0.373 at 15.62.
  const auto gauge = [](double stitches) {
    const PlanRequest request = with_swatch(woman_in_worsted(), stitches, 1.4 * stitches, 101.6);
    if (says(request, "gauge_dense")) return "dense";
    return says(request, "gauge_loose") ? "loose" : "within";
  };
  EXPECT_STREQ(gauge(20.45), "within");
  EXPECT_STREQ(gauge(20.47), "dense");
  EXPECT_STREQ(gauge(15.63), "within");
  EXPECT_STREQ(gauge(15.61), "loose");
  const PlanRequest dense = with_swatch(woman_in_worsted(), 23, 32, 101.6);
  EXPECT_EQ(test::number_in(find(odd_of(dense), "gauge_dense")->what, "fits"),
            2)  // sport, 23 to 26
  ;
}

TEST(Odd, AGaugeOffTheLabelOrOfNoNamedYarnFitsByItself) {
  PlanRequest label = woman_in_worsted();
  label.swatch = {};
  EXPECT_FALSE(says(label, "gauge_dense"));
  PlanRequest unnamed = with_swatch(woman_in_worsted(), 23, 32, 101.6);
  unnamed.yarn.category.reset();
  EXPECT_FALSE(says(unnamed, "gauge_dense"));
}

TEST(Odd, ReadingsThatScatterAreTold) {
  // Two readings a apart from their mean have cv = a sqrt(2): 5 % at a = 3.54 %.
  const auto apart = [](double share) {
    PlanRequest request = woman_in_worsted();
    request.swatch.readings = {test::reading(20 * (1 + share), 101.6, 28, 101.6),
                               test::reading(20 * (1 - share), 101.6, 28, 101.6)};
    return says(request, "readings_scatter");
  };
  EXPECT_FALSE(apart(0.0353));
  EXPECT_TRUE(apart(0.0354));
  PlanRequest rounds = woman_in_worsted();
  rounds.swatch.readings = {test::reading(20, 101.6, 30, 101.6),
                            test::reading(20, 101.6, 26, 101.6)};
  EXPECT_TRUE(says(rounds, "readings_scatter"));
}

TEST(OddProperty, TellsEveryCautionOfThePlanOnceAndInOrderOfHarm) {
  test::for_random_plans(900, [](const PlanRequest& request, const Plan& plan, test::Dice& dice) {
    InHand in_hand;
    if (dice.chance(0.5)) in_hand.balls = dice.between(0, 6);
    const std::vector<Oddity> odd = oddities(request, plan, in_hand);
    for (std::size_t i = 1; i < odd.size(); ++i) EXPECT_LE(odd[i - 1].harm, odd[i].harm);
    std::vector<Problem> told;
    for (const Oddity& one : odd) told.push_back(one.what);
    // At most one each about the leg, the yarn in hand, the gauge and the readings.
    EXPECT_LE(told.size(), plan.cautions.size() + 4);
    EXPECT_FALSE(test::says(told, ""));
    const bool heel_moved = test::says(plan.cautions, "heel_moved_count");
    for (const Caution& caution : plan.cautions) {
      // The heel's doing: told with its cause, and once.
      if (heel_moved && caution.code == "ease_off") continue;
      const auto same = [&](const std::vector<Problem>& all) {
        return std::count_if(all.begin(), all.end(), [&](const Problem& one) {
          return one.code == caution.code && one.message == caution.message;
        });
      };
      EXPECT_EQ(same(told), same(plan.cautions)) << caution.code;
    }
    EXPECT_EQ(find(odd, "tight_on_leg") != nullptr, plan.leg_fit.worst_use > kWornUse);
  });
}

}  // namespace
}  // namespace twinround

// The shares that a table gives, against other ways to them.
#include "cover_table.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "drive_examples.h"
#include "size_choice.h"

namespace twinround {
namespace {

using test::Dice;
using test::mm;
using test::worsted;

// A number of a standard normal curve (Box and Muller).
double normal(Dice& dice) {
  const double radius = std::sqrt(-2 * std::log(1 - dice.between(0, 1)));
  return radius * std::cos(6.283185307179586 * dice.between(0, 1));
}

// A grown-up's foot made of three such numbers by the published means, deviations and correlations,
// by the square root of their matrix (Cholesky): not by the regressions that the table goes by.
WholeFoot grown_foot_at(const AdultFeet& feet, double x, double y, double z) {
  const double lb = feet.correlation_of(FootMeasure::foot_length, FootMeasure::ball_girth);
  const double lh = feet.correlation_of(FootMeasure::foot_length, FootMeasure::heel_ankle_girth);
  const double bh = feet.correlation_of(FootMeasure::ball_girth, FootMeasure::heel_ankle_girth);
  const double b2 = std::sqrt(1 - lb * lb);
  const double h2 = (bh - lb * lh) / b2;
  const double h3 = std::sqrt(1 - lh * lh - h2 * h2);
  const auto at = [&feet](FootMeasure measure, double deviations) {
    return mm(feet.row(measure).mean + feet.row(measure).sd * deviations);
  };
  return {at(FootMeasure::foot_length, x), at(FootMeasure::ball_girth, lb * x + b2 * y),
          at(FootMeasure::heel_ankle_girth, lh * x + h2 * y + h3 * z)};
}

WholeFoot grown_foot(const AdultFeet& feet, Dice& dice) {
  const double x = normal(dice);
  const double y = normal(dice);
  return grown_foot_at(feet, x, y, normal(dice));
}

// Snyder's lengths by age; the girths by the assumptions of core/facts: ball 0.97 of the length
// give or take 6 %, heel 1.36 of the ball with its 95th percentile at 1.45.
WholeFoot childs_foot(int age, Dice& dice) {
  const auto row = child_feet(age);
  const bool boy = dice.chance(0.5);
  const double length = boy ? row->boys_mean + row->boys_sd * normal(dice)
                            : row->girls_mean + row->girls_sd * normal(dice);
  const double ball = 0.97 * length * (1 + 0.06 * normal(dice));
  const double heel = ball * (1.36 + (1.45 - 1.36) / 1.6448536 * normal(dice));
  return {mm(length), mm(ball), mm(heel)};
}

WholeFoot any_foot(const std::vector<FeetGroup>& groups, Dice& dice) {
  double all = 0;
  for (const FeetGroup& group : groups) all += group.share;
  double at = dice.between(0, all);
  for (const FeetGroup& group : groups) {
    at -= group.share;
    if (at > 0) continue;
    if (group.body == Body::child) return childs_foot(group.age_years, dice);
    return grown_foot(group.body == Body::man ? men_feet() : women_feet(), dice);
  }
  return childs_foot(groups.back().age_years, dice);
}

double share_of_random_feet(const SockMake& make, const std::vector<SockSize>& sizes,
                            const std::vector<FeetGroup>& groups, Dice& dice, int feet) {
  int served = 0;
  for (int i = 0; i < feet; ++i) {
    const WholeFoot foot = any_foot(groups, dice);
    bool is_served = false;
    for (const SockSize& size : sizes) is_served = is_served || serves(make, size, foot);
    served += is_served ? 1 : 0;
  }
  return static_cast<double>(served) / feet;
}

// Random sizes of random makes, each share against feet drawn one by one. With 200 000 feet the
// draw's own standard error is 0.11 percentage points at the most; half a point is over four of it.
TEST(CoverTable, GivesTheSharesOfFeetDrawnAtRandom) {
  constexpr int kFeet = 200000;
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  for (std::uint32_t i = 0; i < 8; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    Dice dice(first + i);
    SockMake make = worsted();
    make.gauge = StitchGauge::per_mm(dice.between(0.12, 0.40));
    make.widest_stitch = mm(dice.between(1.5, 2.1) / make.gauge.per_mm());
    if (dice.chance(0.5)) make.leg = {mm(dice.between(120, 300)), 0};
    const auto groups = i % 3 == 0   ? test::women()
                        : i % 3 == 1 ? test::women_and_men()
                                     : test::a_village();
    const CoverTable table = cover_table(feet_of(groups), make, dice.whole(1, 3) * 2);
    ASSERT_GT(table.size(), 0);
    std::vector<int> candidates;
    std::vector<SockSize> sizes;
    // The best of two sizes, and two more at random: edges of many kinds.
    candidates = best_sizes(table, 2, 1, {}).candidates;
    for (int more = 0; more < 2; ++more) candidates.push_back(dice.whole(0, table.size() - 1));
    for (const int candidate : candidates) sizes.push_back(test::size_of(table, candidate));
    EXPECT_NEAR(share_of(table, candidates), share_of_random_feet(make, sizes, groups, dice, kFeet),
                0.005);
  }
}

// z with that share of a normal curve below it, by Newton's steps.
double deviations(double share) {
  double z = 0;
  for (int i = 0; i < 60; ++i) {
    const double off = 0.5 * std::erfc(-z / std::sqrt(2.0)) - share;
    const double step = off * std::sqrt(6.283185307179586) * std::exp(0.5 * z * z);
    z -= std::clamp(step, -0.5, 0.5);
    if (std::abs(step) < 1e-10) break;
  }
  return z;
}

// Of points laid evenly through the cube of all shares (multiples of the powers of the number that
// solves x^4 = x + 1, Roberts 2018), each a foot: no dice, and ten times closer than dice.
double share_of_even_feet(const SockMake& make, const std::vector<SockSize>& sizes,
                          const AdultFeet& feet, int points) {
  constexpr double kRoot = 1.2207440846057596;
  const auto place = [](int i, double power) { return std::fmod(0.5 + i * power, 1.0); };
  int served = 0;
  for (int i = 1; i <= points; ++i) {
    const WholeFoot foot = grown_foot_at(feet, deviations(place(i, 1 / kRoot)),
                                         deviations(place(i, 1 / (kRoot * kRoot))),
                                         deviations(place(i, 1 / (kRoot * kRoot * kRoot))));
    bool is_served = false;
    for (const SockSize& size : sizes) is_served = is_served || serves(make, size, foot);
    served += is_served ? 1 : 0;
  }
  return static_cast<double>(served) / points;
}

// Within 0.05 percentage points with three million points, the table's own claim; so few come that
// near themselves only within 0.1.
TEST(CoverTable, GivesTheSharesOfFeetLaidEvenly) {
  for (const Body body : {Body::woman, Body::man}) {
    const AdultFeet& feet = body == Body::man ? men_feet() : women_feet();
    const CoverTable table = cover_table(feet_of({{body, 0, 1}}), worsted(), 4);
    for (int k = 1; k <= 3; ++k) {
      const std::vector<int> candidates = best_sizes(table, k, 1, {}).candidates;
      std::vector<SockSize> sizes;
      for (const int candidate : candidates) sizes.push_back(test::size_of(table, candidate));
      EXPECT_NEAR(share_of(table, candidates), share_of_even_feet(worsted(), sizes, feet, 200000),
                  0.001);
    }
  }
}

// Percentiles of the people themselves (ANSUR II, standards section 6), not of the curve: a size
// whose reach in length ends at a percentile serves that share of lengths, where girth and heel
// bind nobody. A tube whose stitch stretches without end, wide enough for nine in ten.
TEST(CoverTable, AgreesWithThePublishedPercentilesOfBallGirth) {
  for (const Body body : {Body::woman, Body::man}) {
    const MeasureRow& ball =
        (body == Body::man ? men_feet() : women_feet()).row(FootMeasure::ball_girth);
    SockMake make = worsted();
    make.widest_stitch = mm(100);
    make.leg = {mm(5000), 0};  // so long a leg that the foot's length does not matter
    const CoverTable table = [&] {
      // One stitch per p5 / 40 mm: the count 40 is a tube of exactly p5.
      make.gauge = StitchGauge::per_mm(40 / ball.p5);
      return cover_table(feet_of({{body, 0, 1}}), make, 4);
    }();
    double served = -1;
    for (int i = 0; i < table.size(); ++i) {
      if (test::size_of(table, i).stitches == Stitches(40)) served = share_of(table, {i});
    }
    // 95 % lie above p5, and none above 1.4 p5; the curve meets p5 within 3 mm, a hundredth of
    // feet.
    EXPECT_NEAR(served, 0.95, 0.015);
  }
}

TEST(CoverTable, HoldsEveryFootOnce) {
  for (const auto& groups : {test::women(), test::women_and_men(), test::a_village()}) {
    const CoverTable table = cover_table(feet_of(groups), worsted(), 4);
    double weight = 0;
    for (const FootCell& cell : table.cells) weight += cell.weight;
    EXPECT_NEAR(weight, 1, 1e-4);
    EXPECT_LE(weight, 1 + 1e-12);
    EXPECT_EQ(table.strips.back(), static_cast<int>(table.cells.size()));
    EXPECT_EQ(table.strips.size(), table.strip_edges.size());
  }
}

// A finer choice of candidates would hardly serve more: the neighbours of the best size's length,
// 1 mm apart, against feet drawn at random (the same feet for each).
TEST(CoverTable, LosesLittleByStepsOfFiveMillimetres) {
  const CoverTable table = cover_table(feet_of(test::women()), worsted(), 4);
  const SockSize best = test::size_of(table, best_sizes(table, 1, 1, {}).candidates.at(0));
  std::map<int, double> shares;
  for (int off = -4; off <= 4; ++off) {
    Dice dice(test::first_seed());
    const SockSize size = {best.stitches, best.foot + mm(off)};
    shares[off] = share_of_random_feet(worsted(), {size}, test::women(), dice, 100000);
  }
  for (const auto& [off, share] : shares) EXPECT_LE(share, shares[0] + 0.005) << off;
}

TEST(CoverTable, IsEmptyWhereNoCountGoesRound) {
  SockMake make = worsted();
  make.gauge = StitchGauge::per_mm(40);  // 10 000 stitches round a foot
  EXPECT_EQ(cover_table(feet_of(test::women()), make, 4).size(), 0);
}

}  // namespace
}  // namespace twinround

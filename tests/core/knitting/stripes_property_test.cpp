// What holds for stripes and leftovers of any sock.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

#include "../properties/random_requests.h"
#include "leftovers.h"
#include "own_stripes.h"
#include "stripes.h"

namespace twinround {
namespace {

using test::Dice;

YarnCourse random_course(Dice& dice, int most_rounds) {
  SockInMaking input;
  int stitches = 4 * dice.whole(2, 8);
  for (const Section section : {Section::toe, Section::spiral, Section::widening, Section::cuff}) {
    if (section == Section::widening && dice.chance(0.5)) continue;
    input.rounds.push_back({section, dice.whole(1, most_rounds / 4), stitches});
    stitches += 4 * dice.whole(0, 2);
  }
  input.loop = Length::from_mm(dice.between(5, 25));
  input.cast_on = input.loop * stitches;
  input.bind_off = Length::from_mm(dice.between(50, 1500));
  input.tails = Length::from_mm(dice.between(0, 500));
  return yarn_course(input);
}

std::vector<Stripe> random_repeat(Dice& dice, Length whole) {
  std::vector<Stripe> repeat;
  const int n = dice.whole(1, 6);
  for (int i = 0; i < n; ++i) {
    repeat.push_back({dice.whole(0, 3), whole * dice.between(0.02, 0.4)});
  }
  return repeat;
}

// Each case from its own number, told where it fails.
void for_cases(int times, const std::function<void(Dice&)>& check) {
  for (int i = 0; i < times; ++i) {
    const std::uint32_t seed = test::first_seed() + static_cast<std::uint32_t>(i);
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(seed));
    Dice dice(seed);
    check(dice);
    if (testing::Test::HasFailure()) return;
  }
}

Length sum_of(const std::vector<Band>& bands) {
  Length sum;
  for (const Band& band : bands) sum = sum + band.yarn;
  return sum;
}

void expect_whole(const std::vector<Band>& bands, const YarnCourse& course) {
  ASSERT_NEAR(sum_of(bands).mm(), course.whole.mm(), 1e-6);
  ASSERT_EQ(bands.front().from.round, 1);
  ASSERT_EQ(bands.front().from.share, 0);
  ASSERT_EQ(bands.back().to.round, static_cast<int>(course.rounds.size()));
  ASSERT_EQ(bands.back().to.share, 1);
}

// Small differences at the ends of stripes are none.
void expect_alike(const std::vector<Band>& a, const std::vector<Band>& b) {
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) {
    ASSERT_EQ(a[i].colour, b[i].colour);
    ASSERT_NEAR(a[i].yarn.mm(), b[i].yarn.mm(), 1e-5);
    ASSERT_NEAR(a[i].to.round + a[i].to.share, b[i].to.round + b[i].to.share, 1e-5);
  }
}

TEST(AnyStripes, AddUpToTheSockAndMatchWhenPulledOff) {
  for_cases(2000, [](Dice& dice) {
    const YarnCourse course = random_course(dice, 60);
    StripesInput input;
    input.repeat = random_repeat(dice, course.whole);
    input.tex = 250;
    input.from = std::array{YarnFrom::two_balls, YarnFrom::two_ends,
                            YarnFrom::halves}[static_cast<std::size_t>(dice.whole(0, 2))];
    input.start_a = course.whole * dice.between(0, 1);
    input.start_b = course.whole * dice.between(0, 1);
    input.ball = course.whole * dice.between(1, 4);
    const Result<StripePlan> plan = stripe_plan(course, input);
    ASSERT_TRUE(plan.ok());
    expect_whole(plan.value().a, course);
    expect_whole(plan.value().b, course);
    if (!plan.value().off_b) {
      ASSERT_EQ(input.from, YarnFrom::two_ends);
      ASSERT_FALSE(plan.value().mirrors);
      return;
    }
    // What is pulled off is taken from the ball, and the ball asked again.
    const Length off = plan.value().off_b->yarn;
    StripesInput pulled = input;
    if (input.from == YarnFrom::two_balls) {
      pulled.start_b = input.start_b + off;
    } else if (input.from == YarnFrom::two_ends) {
      pulled.ball = *input.ball - off;
    } else {
      pulled.from = YarnFrom::two_balls;
      pulled.start_b = input.start_a + plan.value().cut->yarn + off;
    }
    expect_alike(plan.value().a, stripe_plan(course, pulled).value().b);
  });
}

TEST(AnyOwnStripes, AddUpToTheSock) {
  for_cases(2000, [](Dice& dice) {
    const YarnCourse course = random_course(dice, 60);
    std::vector<RoundStripe> stripes;
    for (int i = dice.whole(1, 6); i > 0; --i)
      stripes.push_back({dice.whole(0, 3), dice.whole(1, 9)});
    const OwnStripes own = own_stripes(course, stripes, 250);
    expect_whole(own.bands, course);
    Length pair;
    for (const ColourNeed& need : own.colours) pair = pair + need.pair;
    ASSERT_NEAR(pair.mm(), 2 * course.whole.mm(), 1e-6);
  });
}

// Every order of every lot, every round to stop at: written without the search's own reasons.
struct Tried {
  int lots = 99;
  int inside = 99;
  int short_rounds = 0;
};

class Trial {
 public:
  Trial(const YarnCourse& course, const LeftoversInput& input) : course_(course), input_(input) {
    go(0, 0, 0, 0);
  }
  Tried best;

 private:
  Length take(int done, int to, bool bind_off) const {
    Length sum = 2 * course_.tail;
    if (done == 0) sum = sum + course_.used[0] - course_.tail;
    sum = sum + course_.used[static_cast<std::size_t>(to)] -
          course_.used[static_cast<std::size_t>(done)];
    return bind_off ? sum + course_.bind_off : sum;
  }
  bool is_inside(int round) const {
    const auto of = [&](int r) { return course_.rounds[static_cast<std::size_t>(r)].section; };
    return of(round - 1) == of(round) && of(round) != Section::spiral &&
           of(round) != Section::widening;
  }
  void go(int done, unsigned used, int lots, int inside) {
    const int all = static_cast<int>(course_.rounds.size());
    for (std::size_t lot = 0; lot < input_.lots.size(); ++lot) {
      if ((used >> lot) & 1U) continue;
      const double half = input_.lots[lot].mm() / 2 / (1 + input_.margin) + 1e-9;
      for (int to = done + 1; to <= all; ++to) {
        if (take(done, to, true).mm() <= half) {
          best.short_rounds = std::max(best.short_rounds, to);
          if (to == all && std::pair(lots + 1, inside) < std::pair(best.lots, best.inside)) {
            best.lots = lots + 1;
            best.inside = inside;
          }
        }
        if (to == all || take(done, to, false).mm() > half) continue;
        go(to, used | (1U << lot), lots + 1, inside + (is_inside(to) ? 1 : 0));
      }
    }
  }

  const YarnCourse& course_;
  const LeftoversInput& input_;
};

TEST(AnyLeftovers, AreLaidAsWellAsEveryOrderTriedWouldLayThem) {
  int reached = 0;
  int not_reached = 0;
  int just = 0;
  for_cases(1500, [&](Dice& dice) {
    const YarnCourse course = random_course(dice, 16);
    LeftoversInput input;
    input.margin = dice.chance(0.5) ? 0.1 : 0;
    const int lots = dice.whole(1, 4);
    const double enough = dice.between(0.6, 2.5);
    for (int i = 0; i < lots; ++i) {
      input.lots.push_back(course.whole * (enough * dice.between(0.3, 3) / lots));
    }
    const Leftovers found = lay_leftovers(course, input);
    if (found.reaches && !found.keeps_margin) {
      ASSERT_EQ(Trial(course, input).best.lots, 99);
      input.margin = 0;
      just += 1;
    }
    const Tried best = Trial(course, input).best;
    ASSERT_EQ(found.reaches, best.lots < 99);
    (found.reaches ? reached : not_reached) += 1;
    if (found.reaches) {
      ASSERT_EQ(found.joins + 1, best.lots);
      ASSERT_EQ(found.joins_inside, best.inside);
    } else {
      ASSERT_EQ(found.rounds, best.short_rounds);
    }
    // From the toe up without a gap, each lot once and within its half.
    int done = 0;
    unsigned used = 0;
    for (const LotRun& run : found.runs) {
      ASSERT_EQ(run.from, done + 1);
      ASSERT_GE(run.to, run.from);
      done = run.to;
      ASSERT_EQ((used >> run.lot) & 1U, 0U);
      used |= 1U << run.lot;
      ASSERT_LE(run.yarn.mm() * (1 + input.margin),
                input.lots[static_cast<std::size_t>(run.lot)].mm() / 2 + 1e-6);
    }
    ASSERT_EQ(done, found.rounds);
    if (!found.reaches && input.lots.size() < kMostLots) {
      input.lots.push_back(found.missing * (1 + 1e-9));
      ASSERT_TRUE(lay_leftovers(course, input).keeps_margin);
    }
  });
  // Every kind was looked at.
  EXPECT_GT(just, 20);
  EXPECT_GT(reached, 100);
  EXPECT_GT(not_reached, 100);
}

TEST(TwelveLots, AreLaidToo) {
  Dice dice(test::first_seed());
  const YarnCourse course = random_course(dice, 2000);
  LeftoversInput input;
  for (int i = 0; i < kMostLots; ++i) input.lots.push_back(course.whole * 0.25 + 4 * course.tail);
  const Leftovers found = lay_leftovers(course, input);
  EXPECT_TRUE(found.reaches);
  EXPECT_GE(found.runs.size(), 8U);
}

}  // namespace
}  // namespace twinround

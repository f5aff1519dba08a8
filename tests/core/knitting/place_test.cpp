#include "place.h"

#include <gtest/gtest.h>

#include <optional>
#include <random>

#include "pace.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::with_rib;
using test::woman_in_worsted;

Plan plan_of(const PlanRequest& request) {
  const Result<Plan> plan = make_plan(request);
  EXPECT_TRUE(plan.ok());
  return plan.value();
}

SockInMaking making_of(const Plan& plan) {
  const YarnNeed& need = plan.yarn.need;
  return {plan.rounds, plan.yarn.loop, need.cast_on, need.bind_off, need.tails};
}

std::optional<Coming> coming(const Place& place, Event event) {
  for (const Coming& one : place.next) {
    if (one.event == event) return one;
  }
  return std::nullopt;
}

// The round in which something comes next; 0 where it comes no more.
int round_of(const Place& place, Event event) {
  const auto found = coming(place, event);
  return found ? found->round : 0;
}

// The worked example: 16 cast on; the toe grows by 4 in rounds 2, 3, 5, 6, 8 and 11 to 40 in 17
// rounds; the rib of rounds 18 to 112 moves every 4th; a cuff of 8.
TEST(Place, OfTheWorkedExampleByHand) {
  const SockInMaking sock = making_of(plan_of(woman_in_worsted()));
  struct Row {
    int done, stitches, increase, rib, shift, cuff;
  };
  for (const Row& row :
       {Row{0, 16, 2, 18, 22, 113}, Row{1, 20, 2, 18, 22, 113}, Row{2, 24, 3, 18, 22, 113},
        Row{3, 24, 5, 18, 22, 113}, Row{10, 40, 11, 18, 22, 113}, Row{11, 40, 0, 18, 22, 113},
        Row{17, 40, 0, 18, 22, 113}, Row{18, 40, 0, 0, 22, 113}, Row{21, 40, 0, 0, 22, 113},
        Row{22, 40, 0, 0, 26, 113}, Row{109, 40, 0, 0, 110, 113}, Row{110, 40, 0, 0, 0, 113},
        Row{112, 40, 0, 0, 0, 113}, Row{113, 40, 0, 0, 0, 0}, Row{120, 40, 0, 0, 0, 0}}) {
    const Place place = place_of(sock, {row.done, 0});
    SCOPED_TRACE(row.done);
    EXPECT_EQ(place.stitches, row.stitches);
    EXPECT_EQ(round_of(place, Event::increase), row.increase);
    EXPECT_EQ(round_of(place, Event::rib), row.rib);
    EXPECT_EQ(round_of(place, Event::shift), row.shift);
    EXPECT_EQ(round_of(place, Event::widening), 0);
    EXPECT_EQ(round_of(place, Event::cuff), row.cuff);
    EXPECT_EQ(round_of(place, Event::bind_off), 121);
    EXPECT_EQ(place.all_done, row.done == 120);
  }
}

TEST(Place, TellsEachKindOnceTheNearestFirstAndZeroForTheRoundInHand) {
  const SockInMaking sock = making_of(plan_of(woman_in_worsted()));
  const Place place = place_of(sock, {21, 2});
  ASSERT_EQ(place.next.size(), 3u);
  EXPECT_EQ(place.next[0].event, Event::shift);
  EXPECT_EQ(place.next[0].in, 0);
  EXPECT_EQ(place.next[1].event, Event::cuff);
  EXPECT_EQ(place.next[1].in, 91);
  EXPECT_EQ(place.next[2].event, Event::bind_off);
  EXPECT_EQ(place.next[2].in, 99);
}

TEST(Place, CountsTheRoundInHandPassByPass) {
  const SockInMaking sock = making_of(plan_of(woman_in_worsted()));
  const Place before = place_of(sock, {60, 0});
  struct Row {
    int passes, of_a, of_b;  // of the round's 40 stitches
  };
  for (const Row& row : {Row{0, 0, 0}, Row{1, 20, 0}, Row{2, 20, 20}, Row{3, 20, 40}}) {
    const Place place = place_of(sock, {60, row.passes});
    EXPECT_NEAR(((place.a.used - before.a.used) / sock.loop), row.of_a, 1e-9);
    EXPECT_NEAR(((place.b.used - before.b.used) / sock.loop), row.of_b, 1e-9);
    EXPECT_EQ(place.worked - before.worked, row.of_a + row.of_b);
    EXPECT_EQ(place.to_go + place.worked, before.to_go + before.worked);
    EXPECT_EQ(place.stitches, before.stitches);
  }
  const Place after = place_of(sock, {61, 0});
  EXPECT_EQ(after.worked - before.worked, 80);
}

// Of every rib up to 4 by 4, moved every 1 to 5 rounds, at every round: its moves are the spiral's.
TEST(Place, FindsEveryMoveOfEveryRib) {
  for (int knit = 1; knit <= 4; ++knit) {
    for (int purl = 1; purl <= 4; ++purl) {
      for (int shift = 0; shift <= 5; ++shift) {
        const Result<Plan> planned = make_plan(with_rib(woman_in_worsted(), knit, purl, shift));
        if (!planned.ok()) continue;
        const Plan& plan = planned.value();
        const int toe = static_cast<int>(plan.toe.counts.size());
        const int ribbed = toe + plan.length.spiral.value();
        for (int done = 0; done < plan.length.total.value(); ++done) {
          int expected = 0;
          for (int r = ribbed - 1; shift > 0 && r >= done && r > toe; --r) {
            if ((r - toe) % shift == 0) expected = r + 1;
          }
          ASSERT_EQ(round_of(place_of(making_of(plan), {done, 0}), Event::shift), expected)
              << "k" << knit << " p" << purl << " moved every " << shift << ", done " << done;
        }
      }
    }
  }
}

// Legs so wide that the sock grows once or twice: the widening round itself hides a move.
TEST(Place, FindsTheWideningRoundsAndTheMovesBesideThem) {
  int widened = 0;
  for (int calf = 380; calf <= 560; calf += 10) {
    PlanRequest request = woman_in_worsted();
    request.leg_height = mm(320);
    request.foot.calf_girth = mm(calf);
    const Result<Plan> planned = make_plan(request);
    if (!planned.ok()) continue;
    const Plan& plan = planned.value();
    const int toe = static_cast<int>(plan.toe.counts.size());
    for (int done = toe; done < plan.length.total.value(); ++done) {
      int expected = 0;
      for (const WideningStage& stage : plan.widening) {
        const int round = toe + stage.round;
        if (round >= done && expected == 0) expected = round + 1;
      }
      const Place place = place_of(making_of(plan), {done, 0});
      ASSERT_EQ(round_of(place, Event::widening), expected) << calf << " " << done;
      int move = 0;
      for (int r = toe + plan.length.spiral.value() - 1; r >= done && r > toe; --r) {
        if ((r - toe) % 4 == 0) move = r + 1;
      }
      ASSERT_EQ(round_of(place, Event::shift), move) << calf << " " << done;
    }
    if (!plan.widening.empty()) ++widened;
  }
  EXPECT_GT(widened, 3);
}

TEST(Place, AddsUpToThePlansOwnMetresAndTime) {
  constexpr unsigned kSeed = 71207;
  std::mt19937 chance(kSeed);
  std::uniform_real_distribution<double> foot(180, 300);
  std::uniform_int_distribution<int> stitch(1, 4);
  int planned = 0;
  for (int i = 0; i < 200; ++i) {
    PlanRequest request = with_rib(woman_in_worsted(), stitch(chance), stitch(chance));
    request.foot.length = mm(foot(chance));
    const Result<Plan> made = make_plan(request);
    if (!made.ok()) continue;
    ++planned;
    const Plan& plan = made.value();
    const YarnNeed& need = plan.yarn.need;
    const SockInMaking sock = making_of(plan);
    const int rounds = rounds_of(sock);
    ASSERT_EQ(rounds, plan.length.total.value()) << "seed " << kSeed;
    const Place start = place_of(sock, {0, 0});
    EXPECT_NEAR(start.a.used.mm(), (need.cast_on + kTail).mm(), 1e-6) << "seed " << kSeed;
    EXPECT_NEAR(knitting_time(start.to_go, Rounds(start.rounds_to_go), kLearnerPace).minutes(),
                plan.time.minutes(), 1e-6);
    const Place end = place_of(sock, {rounds, 0});
    EXPECT_NEAR(end.a.used.mm(), (need.sock - need.bind_off - kTail).mm(), 1e-6);
    EXPECT_NEAR(end.b.to_go.mm(), (need.bind_off + kTail).mm(), 1e-6);
    EXPECT_EQ(end.to_go, 0);
    EXPECT_EQ(end.rounds_to_go, 0);
    for (int done = 0; done < rounds; done += 7) {
      const Place place = place_of(sock, {done, done % kPassesPerRound});
      EXPECT_NEAR((place.a.used + place.a.to_go).mm(), need.sock.mm(), 1e-6) << "seed " << kSeed;
      EXPECT_NEAR((place.b.used + place.b.to_go).mm(), need.sock.mm(), 1e-6) << "seed " << kSeed;
    }
  }
  EXPECT_GT(planned, 100);
}

}  // namespace
}  // namespace twinround

// What holds for the rounds of every plan: toe, spiral, second sock, cuff.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "random_requests.h"

namespace twinround {
namespace {

using test::Dice;
using test::for_random_plans;
using test::mirrored;
using test::rounds_of;
using test::stitch_by_stitch;

constexpr int kTimes = 2000;

const RoundLine& line_of(const Plan& plan, int index) {
  return plan.lines[static_cast<std::size_t>(index)];
}

// The rounds one by one, as one would knit them.
std::vector<RoundSpan> one_by_one(const Plan& plan) {
  std::vector<RoundSpan> rounds;
  for (RoundSpan span : plan.rounds) {
    const int times = span.rounds;
    span.rounds = 1;
    rounds.insert(rounds.end(), static_cast<std::size_t>(times), span);
  }
  return rounds;
}

TEST(EveryToe, StepsByNothingOrFourEndsOnTheCountAndRestsAfterTwo) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    const bool one_side_at_a_time = request.toe_shape == ToeShape::left_right;
    const std::vector<int>& counts = plan.toe.counts;
    ASSERT_EQ(counts.front(), plan.toe.cast_on.value());  // round 1 is plain
    ASSERT_EQ(counts.back(), plan.stitches.value());
    ASSERT_EQ(plan.toe.cast_on.value() % 4, plan.stitches.value() % 4);
    ASSERT_EQ(plan.toe.wraps * 2, plan.toe.cast_on.value());
    int together = 0;
    int increases = 0;
    for (std::size_t j = 1; j < counts.size(); ++j) {
      const int step = counts[j] - counts[j - 1];
      ASSERT_TRUE(step == 0 || step == 4 || (one_side_at_a_time && step == 2)) << "round " << j + 1;
      together = step > 0 ? together + 1 : 0;
      ASSERT_LE(together, 2) << "round " << j + 1;
      increases += step > 0 ? 1 : 0;
    }
    ASSERT_EQ(increases, plan.toe.increase_rounds);
  });
}

TEST(EveryToe, IsToldAsItIsCounted) {
  int one_sided = 0;
  for_random_plans(kTimes, [&](const PlanRequest& request, const Plan& plan, Dice&) {
    const bool differ = request.toe_shape == ToeShape::left_right;
    ASSERT_EQ(plan.toe.sides.size(), plan.toe.counts.size());
    const std::vector<RoundSpan> rounds = one_by_one(plan);
    int before = plan.toe.cast_on.value();
    for (std::size_t j = 0; j < plan.toe.counts.size(); ++j) {
      ASSERT_EQ(rounds[j].section, Section::toe);
      ASSERT_EQ(rounds[j].stitches, plan.toe.counts[j]);
      const RoundLine& line = line_of(plan, rounds[j].line);
      const std::string half(static_cast<std::size_t>(before / 2), 'k');
      // k1, M1R, k to the last stitch, M1L, k1 on each half; one side alone is the start of the
      // first half and the end of the second, or the other two edges.
      const std::string inner = half.substr(2);
      const std::string at_start = "k>" + inner + "k";
      const std::string at_end = "k" + inner + "<k";
      const int step = plan.toe.counts[j] - before;
      const ToeSides sides = plan.toe.sides[j];
      ASSERT_EQ(step, sides == ToeSides::none ? 0 : sides == ToeSides::both ? 4 : 2);
      const bool great = sides == ToeSides::great;
      const std::string first = step == 0   ? half
                                : step == 4 ? "k>" + inner + "<k"
                                : great     ? at_start
                                            : at_end;
      const std::string second = step == 2 ? (great ? at_end : at_start) : first;
      ASSERT_EQ(stitch_by_stitch(line.first), first) << "round " << j + 1;
      ASSERT_EQ(stitch_by_stitch(line.second), second) << "round " << j + 1;
      // Of a left and a right toe the second sock is the mirror: its increases on the other side.
      const RoundLine& other = line_of(plan, rounds[j].second_line);
      ASSERT_EQ(stitch_by_stitch(other.first), step == 2 ? second : first);
      ASSERT_EQ(stitch_by_stitch(other.second), first);
      ASSERT_TRUE(differ || rounds[j].second_line == rounds[j].line);
      one_sided += step == 2 ? 1 : 0;
      before = plan.toe.counts[j];
    }
  });
  EXPECT_GT(one_sided, 0);
}

// Knit or purl of stitch i of rib round r, by the rule itself: leaning left the rib has moved
// floor(r/shift) stitches forward, leaning right back.
char ruled(const Rib& rib, int i, int r) {
  const int moved = rib.rounds_per_shift == 0 ? 0 : r / rib.rounds_per_shift;
  int place = rib.lean == Lean::right ? i + moved : i - moved;
  const int repeat = rib.knit + rib.purl;
  place = ((place % repeat) + repeat) % repeat;
  return place < rib.knit ? 'k' : 'p';
}

std::string ruled_round(const Rib& rib, int stitches, int r) {
  std::string round;
  for (int i = 0; i < stitches; ++i) round += ruled(rib, i, r);
  return round;
}

TEST(EverySpiral, TurnsTheRibByTheRule) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    const std::vector<RoundSpan> rounds = one_by_one(plan);
    const int toe = rounds_of(plan, Section::toe);
    const int spiral = rounds_of(plan, Section::spiral);
    for (int r = 0; r < spiral; ++r) {
      const RoundSpan& round = rounds[static_cast<std::size_t>(toe + r)];
      ASSERT_EQ(round.section, Section::spiral);
      const RoundLine& line = line_of(plan, round.line);
      ASSERT_EQ(stitch_by_stitch(line), ruled_round(request.rib, plan.stitches.value(), r))
          << "rib round " << r;
      ASSERT_EQ(line.first.empty(), false);
      ASSERT_EQ(stitches_after(line.first), stitches_after(line.second));
    }
  });
}

TEST(EverySpiral, IsTheSameRibTurned) {
  for_random_plans(kTimes, [](const PlanRequest&, const Plan& plan, Dice&) {
    std::string first;
    for (const RoundSpan& span : plan.rounds) {
      if (span.section != Section::spiral) continue;
      const std::string round = stitch_by_stitch(line_of(plan, span.line));
      if (first.empty()) first = round;
      ASSERT_EQ(round.size(), first.size());
      ASSERT_NE((first + first).find(round), std::string::npos) << first << " to " << round;
    }
    ASSERT_EQ(first.empty(), plan.spiral_rounds.value() == 0);  // widened from the first rib round
  });
}

TEST(EveryPair, ItsSecondSockIsItsFirstOrItsMirror) {
  for_random_plans(kTimes, [](const PlanRequest& request, const Plan& plan, Dice&) {
    for (const RoundSpan& span : plan.rounds) {
      const RoundLine& first = line_of(plan, span.line);
      const RoundLine& second = line_of(plan, span.second_line);
      const bool differ = span.section == Section::toe ? request.toe_shape == ToeShape::left_right
                                                       : request.rib.lean == Lean::mirrored;
      if (!differ) {
        ASSERT_EQ(span.second_line, span.line);
        continue;
      }
      ASSERT_EQ(stitch_by_stitch(second.first), mirrored(stitch_by_stitch(first.first)));
      ASSERT_EQ(stitch_by_stitch(second.second), mirrored(stitch_by_stitch(first.second)));
    }
  });
}

TEST(EveryCuff, GoesOnWhereTheSpiralEnded) {
  int cuffs = 0;
  for_random_plans(kTimes, [&](const PlanRequest& request, const Plan& plan, Dice&) {
    // Of a widened leg the columns are followed into the cuff in widening_property_test.cpp.
    if (!plan.widening.empty()) return;
    const int spiral = rounds_of(plan, Section::spiral);
    for (const RoundSpan& span : plan.rounds) {
      if (span.section != Section::cuff) continue;
      ++cuffs;
      ASSERT_EQ(stitch_by_stitch(line_of(plan, span.line)),
                ruled_round(request.rib, plan.stitches.value(), spiral - 1));
    }
  });
  EXPECT_GT(cuffs, kTimes / 4);
}

TEST(EveryPlansRounds, AddUp) {
  for_random_plans(kTimes, [](const PlanRequest&, const Plan& plan, Dice&) {
    ASSERT_EQ(rounds_of(plan, Section::toe), static_cast<int>(plan.toe.counts.size()));
    ASSERT_EQ(rounds_of(plan, Section::spiral), plan.spiral_rounds.value());
    ASSERT_EQ(rounds_of(plan, Section::widening), plan.widening_rounds.value());
    ASSERT_EQ(plan.spiral_rounds + plan.widening_rounds, plan.length.spiral);
    ASSERT_EQ(rounds_of(plan, Section::cuff), plan.length.cuff.value());
    ASSERT_GE(plan.length.spiral.value(), 1);
    ASSERT_EQ(static_cast<int>(one_by_one(plan).size()), plan.length.total.value());
    for (const RoundSpan& span : plan.rounds) {
      ASSERT_GT(span.rounds, 0);
      for (const int index : {span.line, span.second_line}) {
        const RoundLine& line = line_of(plan, index);
        ASSERT_EQ((stitches_after(line.first) + stitches_after(line.second)).value(),
                  span.stitches);
      }
      const int own = plan.stitches.value();
      const int edge = plan.edge_stitches.value();
      ASSERT_TRUE(span.section != Section::spiral || span.stitches == own);
      ASSERT_TRUE(span.section != Section::cuff || span.stitches == edge);
      ASSERT_TRUE(span.section != Section::widening ||
                  (own < span.stitches && span.stitches <= edge));
    }
  });
}

TEST(EveryPlansLines, AreToldOnceUsedAndFoldBack) {
  for_random_plans(kTimes, [](const PlanRequest&, const Plan& plan, Dice&) {
    std::vector<bool> used(plan.lines.size(), false);
    for (const RoundSpan& span : plan.rounds) {
      used[static_cast<std::size_t>(span.line)] = true;
      used[static_cast<std::size_t>(span.second_line)] = true;
    }
    ASSERT_EQ(std::count(used.begin(), used.end(), false), 0);
    for (std::size_t i = 0; i < plan.lines.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) ASSERT_FALSE(plan.lines[i] == plan.lines[j]);
      for (const HalfLine& half : {plan.lines[i].first, plan.lines[i].second}) {
        HalfLine unfolded;
        for (const Phrase& phrase : fold_repeats(half)) {
          for (int time = 0; time < phrase.times; ++time) {
            unfolded.insert(unfolded.end(), phrase.runs.begin(), phrase.runs.end());
          }
        }
        ASSERT_EQ(unfolded, half);
      }
    }
  });
}

}  // namespace
}  // namespace twinround

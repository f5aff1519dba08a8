// The lines of a plan and the rounds they are worked in.
#include <gtest/gtest.h>

#include <cstddef>
#include <string>
#include <vector>

#include "plan.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::planned;
using test::rounds_of;
using test::stitch_by_stitch;
using test::with_rib;
using test::woman_in_worsted;

const RoundLine& line_of(const Plan& plan, int index) {
  return plan.lines[static_cast<std::size_t>(index)];
}

TEST(PlanRounds, RunFromToeToCuff) {
  const Plan plan = planned(woman_in_worsted());
  EXPECT_EQ(rounds_of(plan, Section::toe), 17);
  EXPECT_EQ(rounds_of(plan, Section::spiral), 95);
  EXPECT_EQ(rounds_of(plan, Section::cuff), 8);
  int section = 0;
  for (const RoundSpan& span : plan.rounds) {
    EXPECT_GE(static_cast<int>(span.section), section);
    section = static_cast<int>(span.section);
  }
}

TEST(PlanRounds, TheToeTellsEachPlainAndIncreaseRound) {
  const Plan plan = planned(woman_in_worsted());
  // 16, 20, 24, 24, ...: a plain round, two increase rounds, a plain one.
  EXPECT_EQ(stitch_by_stitch(line_of(plan, plan.rounds[0].line).first), "kkkkkkkk");
  EXPECT_EQ(stitch_by_stitch(line_of(plan, plan.rounds[1].line).first), "k>kkkkkk<k");
  EXPECT_EQ(stitch_by_stitch(line_of(plan, plan.rounds[2].line).first), "k>kkkkkkkk<k");
  EXPECT_EQ(stitch_by_stitch(line_of(plan, plan.rounds[3].line).first), "kkkkkkkkkkkk");
  // Its last seven rounds of 40 are an increase and six plain ones.
  EXPECT_EQ(plan.rounds[9].rounds, 1);
  EXPECT_EQ(plan.rounds[9].stitches, 40);
  EXPECT_EQ(plan.rounds[10].rounds, 6);
  EXPECT_EQ(plan.rounds[10].stitches, 40);
  EXPECT_EQ(plan.rounds[10].section, Section::toe);
}

TEST(PlanRounds, TheRibMovesEveryFourRounds) {
  const Plan plan = planned(woman_in_worsted());
  // 95 = 23 x 4 + 3, in four lines one after the other.
  std::vector<RoundSpan> spiral;
  for (const RoundSpan& span : plan.rounds) {
    if (span.section == Section::spiral) spiral.push_back(span);
  }
  ASSERT_EQ(spiral.size(), 24U);
  const std::vector<std::string> begins = {"kkpp", "pkkp", "ppkk", "kppk"};
  for (std::size_t i = 0; i < spiral.size(); ++i) {
    SCOPED_TRACE(i);
    EXPECT_EQ(spiral[i].rounds, i < 23 ? 4 : 3);
    EXPECT_EQ(spiral[i].stitches, 40);
    EXPECT_EQ(spiral[i].second_line, spiral[i].line);
    const std::string first = stitch_by_stitch(line_of(plan, spiral[i].line).first);
    EXPECT_EQ(first.substr(0, 4), begins[i % 4]);
  }
}

TEST(PlanRounds, TheCuffStandsOnTheLastOffset) {
  const Plan plan = planned(woman_in_worsted());
  // Rib round 94 (from 0) stands at 23 = 3 (mod 4).
  ASSERT_EQ(plan.rounds.back().section, Section::cuff);
  EXPECT_EQ(plan.rounds.back().rounds, 8);
  EXPECT_EQ(plan.rounds.back().line, plan.rounds[plan.rounds.size() - 2].line);
  EXPECT_EQ(stitch_by_stitch(line_of(plan, plan.rounds.back().line).first).substr(0, 4), "kppk");
}

TEST(PlanRounds, EachLineIsToldOnce) {
  for (const Lean lean : {Lean::left, Lean::right, Lean::mirrored}) {
    const Plan plan = planned(with_rib(woman_in_worsted(), 3, 1, 1, lean));
    for (std::size_t i = 0; i < plan.lines.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(plan.lines[i] == plan.lines[j]);
    }
  }
}

TEST(PlanRounds, AStraightRibIsOneRun) {
  const Plan plan = planned(with_rib(woman_in_worsted(), 2, 2, 0));
  int spans = 0;
  for (const RoundSpan& span : plan.rounds) {
    if (span.section != Section::spiral) continue;
    ++spans;
    EXPECT_EQ(span.rounds, 95);
  }
  EXPECT_EQ(spans, 1);
}

TEST(PlanRounds, AMirroredPairHasItsSecondSockBackwards) {
  const Plan plan = planned(with_rib(woman_in_worsted(), 2, 2, 4, Lean::mirrored));
  for (const RoundSpan& span : plan.rounds) {
    if (span.section == Section::toe) {
      EXPECT_EQ(span.second_line, span.line);
      continue;
    }
    for (const bool second_half : {false, true}) {
      const RoundLine& first = line_of(plan, span.line);
      const RoundLine& second = line_of(plan, span.second_line);
      const std::string read = stitch_by_stitch(second_half ? first.second : first.first);
      EXPECT_EQ(stitch_by_stitch(second_half ? second.second : second.first),
                std::string(read.rbegin(), read.rend()));
    }
  }
}

TEST(PlanRounds, ASockWithoutCuffEndsInItsSpiral) {
  PlanRequest request = woman_in_worsted();
  request.cuff = test::mm(0);
  const Plan plan = planned(request);
  EXPECT_EQ(plan.rounds.back().section, Section::spiral);
  EXPECT_EQ(rounds_of(plan, Section::spiral), 103);
}

}  // namespace
}  // namespace twinround

// What holds for every widening: whole repeats, and columns that go on unbroken.
#include <gtest/gtest.h>

#include <cstddef>
#include <string>
#include <vector>

#include "widened_legs.h"

namespace twinround {
namespace {

using test::for_widened_legs;
using test::one_by_one;
using test::RoundSeen;
using test::says;
using test::stage_at;
using test::stitch_by_stitch;

TEST(EveryWidenedLeg, KeepsWholeRepeatsAndGrowsEachByOneStitchAColumn) {
  for_widened_legs([](const PlanRequest& request, const Plan& plan) {
    const int repeats = plan.stitches.value() / request.rib.repeat();
    WideRib before{request.rib.knit, request.rib.purl, plan.stitches};
    for (const WideningStage& stage : plan.widening) {
      const int knit = stage.rib.knit - before.knit;
      const int purl = stage.rib.purl - before.purl;
      ASSERT_TRUE(knit == 0 || knit == 1);
      ASSERT_TRUE(purl == 0 || purl == 1);
      // One at a time, but where that would leave an odd count.
      const bool odd = (before.stitches.value() + repeats) % 2 != 0;
      ASSERT_EQ(knit + purl, odd ? 2 : 1);
      // The narrower column, of two alike the purl.
      ASSERT_TRUE(odd || purl == (before.purl <= before.knit ? 1 : 0));
      ASSERT_EQ(stage.rib.stitches.value(), repeats * (stage.rib.knit + stage.rib.purl));
      ASSERT_EQ(stage.rib.stitches.value() % 2, 0);
      before = stage.rib;
    }
    ASSERT_EQ(plan.edge_stitches, before.stitches);
  });
}

bool is_made(char stitch) {
  return stitch == '<' || stitch == '>' || stitch == '+';
}

// The stitches a line works into, and the loops it leaves, each seen as knit or purl.
struct Faces {
  std::string worked;
  std::string left;
};
Faces faces_of(const std::string& stitches) {
  Faces faces;
  for (const char stitch : stitches) {
    if (!is_made(stitch)) faces.worked += stitch;
    faces.left += !is_made(stitch) ? stitch : stitch == '+' ? 'p' : 'k';
  }
  return faces;
}

// Moves the ring one place on (+1: each face to the next stitch in knitting order).
std::string moved(const std::string& ring, int places) {
  const std::size_t n = ring.size();
  std::string turned(n, ' ');
  for (std::size_t i = 0; i < n; ++i) {
    turned[(i + n + static_cast<std::size_t>(places + static_cast<int>(n))) % n] = ring[i];
  }
  return turned;
}

// Each made stitch is the last of its column: behind a stitch of its own face, before one of the
// other; and after the round the ring is columns of the new widths.
void expect_columns_grow(const std::string& stitches, const WideRib& to, int repeats) {
  const std::size_t n = stitches.size();
  for (std::size_t i = 0; i < n; ++i) {
    if (!is_made(stitches[i])) continue;
    const char face = stitches[i] == '+' ? 'p' : 'k';
    ASSERT_EQ(stitches[(i + n - 1) % n], face);
    ASSERT_EQ(stitches[(i + 1) % n], face == 'k' ? 'p' : 'k');
  }
  std::string columns;
  for (int i = 0; i < repeats; ++i) {
    columns += std::string(static_cast<std::size_t>(to.knit), 'k') +
               std::string(static_cast<std::size_t>(to.purl), 'p');
  }
  const std::string left = faces_of(stitches).left;
  ASSERT_EQ(left.size(), columns.size());
  ASSERT_NE((columns + columns).find(left), std::string::npos) << left;
}

TEST(EveryWidenedLeg, CarriesEachColumnAcrossTheWideningRound) {
  for_widened_legs([](const PlanRequest& request, const Plan& plan) {
    const std::vector<RoundSeen> rounds = one_by_one(plan);
    const int toe = static_cast<int>(plan.toe.counts.size());
    const int shift = request.rib.rounds_per_shift;
    const int repeats = plan.stitches.value() / request.rib.repeat();
    std::string below;  // the loops on the needle, from the first half's first stitch
    for (int r = 0; toe + r < static_cast<int>(rounds.size()); ++r) {
      const RoundSeen& round = rounds[static_cast<std::size_t>(toe + r)];
      const std::string stitches = stitch_by_stitch(round.line);
      const Faces faces = faces_of(stitches);
      if (r > 0) {
        // Every stitch has the face of the one below, but where the rib moves a stitch sideways.
        const bool in_cuff = round.section == Section::cuff;
        const bool moves = !in_cuff && shift > 0 && r % shift == 0;
        const int places = !moves ? 0 : request.rib.lean == Lean::right ? -1 : 1;
        ASSERT_EQ(faces.worked, moved(below, places)) << "rib round " << r;
      }
      const WideningStage* stage = stage_at(plan, r);
      ASSERT_EQ(faces.left.size() > faces.worked.size(), stage != nullptr) << "rib round " << r;
      if (stage) expect_columns_grow(stitches, stage->rib, repeats);
      below = faces.left;
    }
  });
}

struct Halves {
  int first = 0;
  int second = 0;
  friend bool operator==(const Halves&, const Halves&) = default;
};

TEST(EveryWidenedLeg, CrossesJustTheStitchesThatTheNextRoundNeeds) {
  int crossed = 0;
  for_widened_legs([&](const PlanRequest&, const Plan& plan) {
    const std::vector<RoundSeen> rounds = one_by_one(plan);
    const std::size_t toe = plan.toe.counts.size();
    for (std::size_t at = toe; at + 1 < rounds.size(); ++at) {
      const WideningStage* stage = stage_at(plan, static_cast<int>(at - toe));
      const int crossing = stage ? stage->crossing : 0;
      crossed += crossing != 0 ? 1 : 0;
      for (const bool second_sock : {false, true}) {
        const auto line = [second_sock](const RoundSeen& round) {
          return second_sock ? round.second_line : round.line;
        };
        const RoundLine now = line(rounds[at]);
        const RoundLine next = line(rounds[at + 1]);
        const auto worked = [](const HalfLine& half) {
          return static_cast<int>(faces_of(stitch_by_stitch(half)).worked.size());
        };
        const Halves left{stitches_after(now.first).value() - crossing,
                          stitches_after(now.second).value() + crossing};
        ASSERT_EQ(left, (Halves{worked(next.first), worked(next.second)}));
        ASSERT_EQ(left.first, left.second);
      }
    }
    bool any = false;
    for (const WideningStage& stage : plan.widening) any = any || stage.crossing != 0;
    ASSERT_EQ(says(plan.cautions, "stitch_crosses"), any);
  });
  EXPECT_GT(crossed, 0);  // or nothing of this was tried
}

}  // namespace
}  // namespace twinround

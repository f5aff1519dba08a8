#include "size_shares.h"

#include <gtest/gtest.h>

#include "drive_examples.h"
#include "ordered_sizes.h"

namespace twinround {
namespace {

using test::worsted;

TEST(SizeShares, CountEveryServedFootOnce) {
  for (const auto& groups : {test::women(), test::women_and_men(), test::a_village()}) {
    const CoverTable table = cover_table(feet_of(groups), worsted(), 4);
    for (const auto& run : ordered_sizes(table, 5)) {
      double counted = 0, bodies = 0;
      for (const SizeShare& share : size_shares(table, worsted(), run)) {
        counted += share.counted;
        EXPECT_LE(share.counted, share.serves + 1e-12);
        for (const double body : share.by_body) bodies += body;
        EXPECT_LE(share.lengths.from, share.lengths.to);
      }
      EXPECT_NEAR(counted, share_of(table, run), 1e-9);
      EXPECT_NEAR(bodies, counted, 1e-9);
    }
  }
}

TEST(SizeShares, OfOneSizeIsAllThatItServes) {
  const CoverTable table = cover_table(feet_of(test::women()), worsted(), 4);
  const auto one = best_sizes(table, 1, 1, {}).candidates;
  const SizeShare share = size_shares(table, worsted(), one).at(0);
  EXPECT_NEAR(share.serves, share_of(table, one), 1e-9);
  EXPECT_NEAR(share.counted, share.serves, 1e-9);
  // ANSUR II, women: lengths from 226 (p5) to 268 mm (p95). The feet it does not serve are mostly
  // the widest, which are long.
  EXPECT_NEAR(share.lengths.from.mm(), 226, 3);
  EXPECT_LE(share.lengths.to.mm(), 268);
  EXPECT_GE(share.lengths.to.mm(), 268 - 5);
}

}  // namespace
}  // namespace twinround

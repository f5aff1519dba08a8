#include "size_rule.h"

#include <gtest/gtest.h>

#include "drive_examples.h"

namespace twinround {
namespace {

using test::mm;
using test::worsted;

// 40 stitches make a tube of 203.2 mm; a heel of 0.85 x 40 x 9.977 = 339.2 mm passes; for a foot of
// 240 mm the sock is 1.76 x 240 long.
constexpr double kTube = 203.2;
constexpr double kHeel = 339.218;
const SockSize kForty = {Stitches(40), Length::from_mm(240)};

TEST(SizeRule, ServesUpToBothSidesOfEveryLimit) {
  const struct {
    double length, ball, heel;
    bool is_served;
  } feet[] = {
      {240, 228, 310, true},
      {240, kTube + 0.001, 310, true},
      {240, kTube - 0.001, 310, false},
      {240, 1.4 * kTube - 0.001, 310, true},
      {240, 1.4 * kTube + 0.001, 310, false},
      {240, 228, kHeel - 0.001, true},
      {240, 228, kHeel + 0.001, false},
      {0.95 * 240 + 0.001, 228, 310, true},
      {0.95 * 240 - 0.001, 228, 310, false},
      {1.20 * 240 - 0.001, 228, 310, true},
      {1.20 * 240 + 0.001, 228, 310, false},
  };
  for (const auto& foot : feet) {
    const WholeFoot whole = {mm(foot.length), mm(foot.ball), mm(foot.heel)};
    EXPECT_EQ(serves(worsted(), kForty, whole), foot.is_served)
        << foot.length << " " << foot.ball << " " << foot.heel;
  }
}

TEST(SizeRule, AddsALegOfOneHeightToEveryFoot) {
  SockMake make = worsted();
  make.leg = {mm(200), 0};
  EXPECT_NEAR(sock_length(make, mm(250)).mm(), 0.96 * 250 + 200, 1e-9);
  const LengthBand band = lengths_served(make, mm(250));
  // (0.96 x + 200)/440 from 0.95 to 1.20.
  EXPECT_NEAR(band.from.mm(), (0.95 * 440 - 200) / 0.96, 1e-9);
  EXPECT_NEAR(band.to.mm(), (1.20 * 440 - 200) / 0.96, 1e-9);
}

TEST(SizeRule, PassesTheHeelsThatThePlanPasses) {
  // The plan of that count calls a heel passed up to the same girth.
  PlanRequest request = test::woman_in_worsted();
  request.stitch_count = 40;
  const Plan plan = test::planned(request);
  SockMake make = worsted();
  make.widest_stitch = fabric_in_hand(request).value().widest_stitch;
  EXPECT_NEAR(heel_passed(make, Stitches(40)).mm(), plan.pass_girth.mm(), 1e-9);
  EXPECT_NEAR(tube_girth(make, Stitches(40)).mm(), plan.finished_girth.mm(), 1e-9);
}

}  // namespace
}  // namespace twinround

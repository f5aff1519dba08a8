#include <algorithm>

#include "drive_parts.h"
#include "length.h"
#include "ordered_sizes.h"
#include "rounding.h"
#include "toe.h"

namespace twinround {

namespace {

// The ball girth that a tube fits with the trade's 10 % of negative ease.
constexpr double kGirthEase = -0.10;

bool reaches(double share, double wanted) {
  return at_least(share, wanted);
}

}  // namespace

PlanRequest request_of(const DriveRequest& drive, const SockMake& make, const SockSize& size) {
  PlanRequest request = drive.plan;
  request.foot = {};
  request.foot.length = size.foot;
  request.foot.ball_girth = tube_girth(make, size.stitches) / (1.0 + kGirthEase);
  request.girth_ease = kGirthEase;
  request.leg_height = make.leg.of(size.foot);
  request.stitch_count = size.stitches.value();
  return request;
}

void bar_what_cannot_be(CoverTable& table, const DriveRequest& drive, const SockMake& make,
                        const Gauge& gauge) {
  for (const Stitches n : table.counts) {
    for (const Length foot : table.feet) {
      const PlanRequest request = request_of(drive, make, {n, foot});
      const Toe toe = shape_toe(
          {n, foot, gauge.rounds, request.toe_share, request.tip_share, request.toe_shape});
      const Rounds toe_rounds(static_cast<int>(toe.counts.size()));
      const Length heel = kHeelOfBallMedian * *request.foot.ball_girth;
      const bool stands = divide_length({foot, heel, request.leg_height, request.cuff,
                                         request.length_ease, gauge.rounds, toe_rounds})
                              .ok();
      table.barred.push_back(stands ? 0 : 1);
    }
  }
}

ChosenSizes choose_sizes(const CoverTable& table, const DriveRequest& drive) {
  const std::vector<std::vector<int>> runs = ordered_sizes(table, kMostSizes);
  ChosenSizes chosen;
  for (const std::vector<int>& run : runs) {
    const double share = share_of(table, run);
    if (!chosen.by_number.empty() && share < chosen.by_number.back() + kSlack) break;
    chosen.by_number.push_back(share);
  }
  // Sizes that would add nothing are not made, however many were asked for.
  const int useful = static_cast<int>(chosen.by_number.size());
  int k = std::min(drive.sizes.value_or(1), useful);
  while (!drive.sizes && k < useful &&
         !reaches(chosen.by_number[static_cast<std::size_t>(k - 1)], drive.wanted_share)) {
    ++k;
  }
  const auto best = [&](int sizes) {
    return best_sizes(table, sizes, drive.wanted_share, runs[static_cast<std::size_t>(sizes - 1)]);
  };
  chosen.choice = best(k);
  while (!drive.sizes && k > 1 && reaches(chosen.choice.share, drive.wanted_share)) {
    const SizeChoice fewer = best(k - 1);
    chosen.is_fewest = !reaches(fewer.at_most, drive.wanted_share);
    if (!reaches(fewer.share, drive.wanted_share)) break;
    chosen.choice = fewer;
    --k;
  }
  if (k == 1) chosen.is_fewest = true;
  return chosen;
}

}  // namespace twinround

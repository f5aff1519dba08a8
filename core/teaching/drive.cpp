#include "drive.h"

#include <algorithm>
#include <string>

#include "allotment.h"
#include "drive_parts.h"
#include "rounding.h"

namespace twinround {

namespace {

// How often a size that cannot be knit after all (its leg cannot be widened so far) is replaced.
constexpr int kMostReplaced = 20;

Problem nobody_served() {
  return {
      "/swatch",
      "nobody_served",
      {},
      {},
      "No sock of this fabric goes over anybody's heel and still stays on. Check the gauge, the "
      "stretched width and their units."};
}

SockSize size_at(const CoverTable& table, int candidate) {
  return {table.counts[table.count_of(candidate)], table.feet[table.foot_of(candidate)]};
}

// What the page knows no field for: the leg's height, where it goes by the foot.
std::vector<Problem> at_drive(std::vector<Problem> problems, const DriveRequest& drive) {
  for (Problem& problem : problems) {
    if (problem.field == "/legHeightMm" && drive.leg.of_foot > 0) {
      problem.field = "/drive/legOfFoot";
    }
  }
  return problems;
}

// Plans the chosen sizes; the first that cannot be knit is barred, and told.
std::vector<Problem> plan_sizes(CoverTable& table, const DriveRequest& drive, const SockMake& make,
                                const std::vector<int>& chosen, Drive& result, DriveYarn& yarn) {
  result.sizes.clear();
  for (const int candidate : chosen) {
    DriveSize size;
    size.size = size_at(table, candidate);
    const PlanRequest request = request_of(drive, make, size.size);
    const Result<Plan> planned = make_plan(request);
    if (!planned.ok()) {
      table.barred[static_cast<std::size_t>(candidate)] = 1;
      return at_drive(planned.problems(), drive);
    }
    const Plan& plan = planned.value();
    yarn = {plan.category, plan.yarn.tex, plan.yarn.mass_guessed};
    size.ball_girth = plan.foot.ball_girth.value;
    size.leg_height = request.leg_height;
    size.length = plan.length.length;
    size.girth = plan.finished_girth;
    size.rounds = plan.length.total;
    size.yarn_pair = plan.yarn.need.with_margin;
    size.time_pair = plan.time;
    const Length tube = tube_girth(make, size.size.stitches);
    size.fits_lengths = lengths_served(make, size.size.foot);
    size.fits_balls = {
        kLeastStretch * tube,
        std::min(kMostStretch * tube, heel_passed(make, size.size.stitches) / kHeelOfBallMedian)};
    result.sizes.push_back(size);
  }
  return {};
}

// Nothing can be knit: what is wrong with the size that would serve most.
std::vector<Problem> why_nothing(CoverTable& table, const DriveRequest& drive,
                                 const SockMake& make) {
  table.barred.assign(table.barred.size(), 0);
  const SizeChoice one = best_sizes(table, 1, 1, {});
  Drive result;
  DriveYarn yarn;
  return plan_sizes(table, drive, make, one.candidates, result, yarn);
}

void share_pairs(Drive& result, const DriveRequest& drive, const CoverTable& table,
                 const SockMake& make, const std::vector<int>& candidates) {
  const std::vector<SizeShare> shares = size_shares(table, make, candidates);
  std::vector<double> counted;
  counted.reserve(shares.size());
  for (const SizeShare& share : shares) counted.push_back(share.counted);
  const std::vector<int> pairs = allot(drive.pairs, counted);
  for (std::size_t i = 0; i < result.sizes.size(); ++i) {
    DriveSize& size = result.sizes[i];
    size.share = shares[i];
    size.pairs = pairs[i];
    const auto counts = [&](Body body) {
      return shares[i].by_body[static_cast<std::size_t>(body)] > kSlack;
    };
    size.shoes = shoe_bands(shares[i].lengths, counts(Body::woman), counts(Body::man));
  }
}

}  // namespace

Result<Drive> plan_drive(const DriveRequest& request) {
  const Result<FabricInHand> fabric = fabric_in_hand(request.plan);
  if (!fabric.ok()) return fabric.problems();
  const Gauge gauge = fabric.value().gauge;
  const SockMake make = {gauge.stitches, fabric.value().widest_stitch, request.plan.length_ease,
                         request.leg};
  CoverTable table = cover_table(feet_of(request.groups), make, request.plan.rib.repeat());
  if (table.size() == 0 || share_of_all(table) < kSlack) return nobody_served();
  bar_what_cannot_be(table, request, make, gauge);

  std::vector<Problem> problems;
  for (int tried = 0; tried < kMostReplaced && share_of_all(table) >= kSlack; ++tried) {
    const ChosenSizes chosen = choose_sizes(table, request);
    Drive result;
    DriveYarn yarn;
    problems = plan_sizes(table, request, make, chosen.choice.candidates, result, yarn);
    if (!problems.empty()) continue;
    result.wanted_share = request.wanted_share;
    result.leg = request.leg;
    result.share = chosen.choice.share;
    result.at_most = chosen.choice.at_most;
    result.is_reached = at_least(result.share, request.wanted_share);
    result.is_fewest = result.is_reached && chosen.is_fewest;
    result.by_number = chosen.by_number;
    share_pairs(result, request, table, make, chosen.choice.candidates);
    drive_wool(result, request, yarn);
    result.cautions = drive_cautions(result, request);
    return result;
  }
  return problems.empty() ? why_nothing(table, request, make) : problems;
}

}  // namespace twinround

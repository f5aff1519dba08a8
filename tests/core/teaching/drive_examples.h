// What the tests of many feet start from.
#pragma once

#include <vector>

#include "../properties/random_requests.h"
#include "cover_table.h"
#include "drive.h"

namespace twinround::test {

// 20 stitches over 4 in, 28 rounds; the widest stitch by loop geometry, l/2 with l = 19.95 mm; the
// leg 0.8 of the foot.
inline SockMake worsted() {
  SockMake make;
  make.gauge = StitchGauge::per_mm(20 / 101.6);
  make.widest_stitch = mm(9.977);
  make.leg.of_foot = 0.8;
  return make;
}

inline std::vector<FeetGroup> women() {
  return {{Body::woman, 0, 1}};
}
inline std::vector<FeetGroup> women_and_men() {
  return {{Body::woman, 0, 1}, {Body::man, 0, 1}};
}
inline std::vector<FeetGroup> a_village() {
  std::vector<FeetGroup> groups = {{Body::woman, 0, 3}, {Body::man, 0, 2}};
  for (int age = 2; age <= 12; ++age) groups.push_back({Body::child, age, 0.3});
  return groups;
}

inline DriveRequest forty_pairs() {
  DriveRequest request;
  request.plan = woman_in_worsted();
  request.plan.foot = {};
  request.leg.of_foot = 0.8;
  request.pairs = 40;
  request.groups = women_and_men();
  return request;
}

inline SockSize size_of(const CoverTable& table, int candidate) {
  return {table.counts[table.count_of(candidate)], table.feet[table.foot_of(candidate)]};
}

}  // namespace twinround::test

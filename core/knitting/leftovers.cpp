#include "leftovers.h"

#include <cstddef>
#include <utility>

#include "lot_reach.h"
#include "lot_search.h"

namespace twinround {
namespace {

bool is_as_good(const Leftovers& one, const Leftovers& other) {
  if (one.reaches != other.reaches || one.runs.empty() || other.runs.empty()) return false;
  if (!one.reaches) return one.runs.back().to == other.runs.back().to;
  return one.runs.size() == other.runs.size() && one.joins_inside == other.joins_inside;
}

LotMakes makes_of(const YarnCourse& course, const LotReach& reach, Length half) {
  LotMakes makes;
  makes.half = half;
  int done = 0;
  for (int to = 1; to <= reach.all(); ++to) {
    const Section section = course.rounds[static_cast<std::size_t>(to - 1)].section;
    const bool goes_on =
        to < reach.all() && course.rounds[static_cast<std::size_t>(to)].section == section;
    if (goes_on) continue;
    const bool does = reach.does(half, done, to, to == reach.all());
    if (section == Section::toe) makes.toe = does;
    if (section == Section::spiral) makes.spiral = does;
    if (section == Section::widening) makes.widening = does;
    if (section == Section::cuff) makes.cuff = does;
    done = to;
  }
  return makes;
}

Leftovers lay_with_margin(const YarnCourse& course, const LeftoversInput& input) {
  const LotReach reach(course, input.margin);
  std::vector<Length> halves;
  for (const Length lot : input.lots) halves.push_back(lot / 2);
  LotSearch any_order(reach, halves, false);
  LotSearch told_order(reach, halves, true);
  Leftovers found = any_order.run();
  if (Leftovers told = told_order.run(); is_as_good(told, found)) found = std::move(told);
  for (const Length half : halves) found.lots.push_back(makes_of(course, reach, half));
  if (!found.runs.empty()) {
    found.rounds = found.runs.back().to;
    found.joins = static_cast<int>(found.runs.size()) - 1;
  }
  if (!found.reaches) {
    const Length more = reach.yarn(any_order.missing_from(), reach.all(), true);
    found.missing = more * (2 * (1 + input.margin));
  }
  return found;
}

}  // namespace

std::vector<LotPart> parts_of(const YarnCourse& course, const std::vector<LotRun>& runs) {
  std::vector<LotPart> parts;
  for (const LotRun& run : runs) {
    for (int round = run.from; round <= run.to; ++round) {
      const Section section = course.rounds[static_cast<std::size_t>(round - 1)].section;
      if (round == run.from || parts.back().section != section) {
        parts.push_back({run.lot, section, round, round});
      }
      parts.back().to = round;
    }
  }
  return parts;
}

Leftovers lay_leftovers(const YarnCourse& course, const LeftoversInput& input) {
  Leftovers found = lay_with_margin(course, input);
  found.keeps_margin = found.reaches;
  if (found.reaches || input.margin <= 0) return found;
  LeftoversInput bare = input;
  bare.margin = 0;
  Leftovers just = lay_with_margin(course, bare);
  if (!just.reaches) return found;
  just.lots = found.lots;
  just.missing = found.missing;
  return just;
}

}  // namespace twinround

// The request that most tests start from, and readers for what comes back.
#pragma once

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

#include "feet.h"
#include "line.h"
#include "plan.h"

namespace twinround::test {

inline Length mm(double value) {
  return Length::from_mm(value);
}

inline Reading reading(double stitches, double width_mm, double rounds, double height_mm) {
  Reading made;
  made.stitches = stitches;
  made.width = mm(width_mm);
  made.rounds = rounds;
  made.height = mm(height_mm);
  return made;
}

inline Reading reading_across(double stitches, double width_mm) {
  Reading made;
  made.stitches = stitches;
  made.width = mm(width_mm);
  return made;
}

// A woman's mean foot in worsted: 20 stitches and 28 rounds over 4 in, 100 g of 200 m, k2 p2.
// By hand: g_s = 20/101.6 = 0.19685, g_r = 28/101.6 = 0.27559 a mm; T = 228 x 0.9 x g_s = 40.39, so
// 40 stitches; toe 17 rounds, rib 95, cuff 8, together 120.
inline PlanRequest woman_in_worsted() {
  PlanRequest request;
  request.swatch.needle = mm(4.5);
  request.swatch.readings = {reading(20, 101.6, 28, 101.6)};
  request.yarn.category = 4;
  request.yarn.ball_mass = Mass::from_g(100);
  request.yarn.ball_length = Length::from_m(200);
  request.foot.length = mm(246);
  request.foot.ball_girth = mm(228);
  request.foot.heel_ankle_girth = mm(310);
  request.foot.ankle_girth = mm(216);
  request.foot.calf_girth = mm(373);
  request.leg_height = mm(200);
  return request;
}

// The same swatch for a mean foot of the survey, measured in full.
inline PlanRequest mean_foot(const AdultFeet& feet, double leg_mm) {
  PlanRequest request = woman_in_worsted();
  request.foot.length = mm(feet.row(FootMeasure::foot_length).mean);
  request.foot.ball_girth = mm(feet.row(FootMeasure::ball_girth).mean);
  request.foot.heel_ankle_girth = mm(feet.row(FootMeasure::heel_ankle_girth).mean);
  request.foot.ankle_girth = mm(feet.row(FootMeasure::ankle_girth).mean);
  request.foot.calf_girth = mm(feet.row(FootMeasure::calf_girth).mean);
  request.leg_height = mm(leg_mm);
  return request;
}

inline PlanRequest with_swatch(PlanRequest request, double stitches, double rounds,
                               double over_mm) {
  request.swatch.readings = {reading(stitches, over_mm, rounds, over_mm)};
  return request;
}

inline PlanRequest with_rib(PlanRequest request, int knit, int purl, int rounds_per_shift = 4,
                            Lean lean = Lean::left) {
  request.rib = Rib{knit, purl, rounds_per_shift, lean};
  return request;
}

// The caution or problem of that code, if there is one.
inline std::optional<Problem> find_code(const std::vector<Problem>& all, const std::string& code) {
  for (const Problem& one : all) {
    if (one.code == code) return one;
  }
  return std::nullopt;
}

inline bool says(const std::vector<Problem>& all, const std::string& code) {
  return find_code(all, code).has_value();
}

inline std::optional<double> number_in(const Problem& problem, const std::string& name) {
  for (const Number& number : problem.numbers) {
    if (number.name == name) return number.value;
  }
  return std::nullopt;
}

inline std::string word_in(const Problem& problem, const std::string& name) {
  for (const Word& word : problem.words) {
    if (word.name == name) return word.value;
  }
  return "";
}

// "code@field" of each, in order: a whole list in one comparison.
inline std::vector<std::string> told(const std::vector<Problem>& all) {
  std::vector<std::string> list;
  list.reserve(all.size());
  for (const Problem& one : all) list.push_back(one.code + "@" + one.field);
  return list;
}

// A plan that must stand; fails the test with its problems and gives an empty one where it does
// not.
inline Plan planned(const PlanRequest& request) {
  const Result<Plan> result = make_plan(request);
  if (result.ok()) return result.value();
  std::string problems;
  for (const std::string& one : told(result.problems())) problems += " " + one;
  ADD_FAILURE() << "refused:" << problems;
  return Plan{};
}

// Stitch by stitch, one letter each: k, p, < (make one left), > (make one right), + (make one
// purl).
inline std::string stitch_by_stitch(const HalfLine& half) {
  std::string letters;
  for (const Run& run : half) {
    const char letter = run.work == Work::knit             ? 'k'
                        : run.work == Work::purl           ? 'p'
                        : run.work == Work::make_one_left  ? '<'
                        : run.work == Work::make_one_right ? '>'
                                                           : '+';
    letters.append(static_cast<std::string::size_type>(run.times), letter);
  }
  return letters;
}

inline std::string stitch_by_stitch(const RoundLine& line) {
  return stitch_by_stitch(line.first) + stitch_by_stitch(line.second);
}

// A half as it reads from its other end, on the mirrored sock: an increase leans the other way.
inline std::string mirrored(std::string half) {
  std::string turned(half.rbegin(), half.rend());
  for (char& stitch : turned) stitch = stitch == '<' ? '>' : stitch == '>' ? '<' : stitch;
  return turned;
}

inline int rounds_of(const Plan& plan, Section section) {
  int rounds = 0;
  for (const RoundSpan& span : plan.rounds) {
    if (span.section == section) rounds += span.rounds;
  }
  return rounds;
}

// `counts` as plain numbers.
inline std::vector<int> values(const std::vector<Stitches>& counts) {
  std::vector<int> plain;
  plain.reserve(counts.size());
  for (const Stitches count : counts) plain.push_back(count.value());
  return plain;
}

}  // namespace twinround::test

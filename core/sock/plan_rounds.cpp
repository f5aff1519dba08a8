#include <algorithm>
#include <cstddef>
#include <iterator>
#include <vector>

#include "plan_parts.h"
#include "spiral.h"

namespace twinround {

namespace {

// Where a line stands in the plan's list; equal lines are told once.
int line_index(std::vector<RoundLine>& lines, const RoundLine& line) {
  const auto found = std::find(lines.begin(), lines.end(), line);
  if (found != lines.end()) return static_cast<int>(std::distance(lines.begin(), found));
  lines.push_back(line);
  return static_cast<int>(lines.size()) - 1;
}

void add_round(std::vector<RoundSpan>& spans, const RoundSpan& round) {
  if (!spans.empty()) {
    RoundSpan& last = spans.back();
    if (last.section == round.section && last.stitches == round.stitches &&
        last.line == round.line && last.second_line == round.second_line) {
      last.rounds += round.rounds;
      return;
    }
  }
  spans.push_back(round);
}

void add_toe(Plan& plan) {
  int before = plan.toe.cast_on.value();
  for (const int count : plan.toe.counts) {
    const RoundLine line =
        count == before ? plain_round(Stitches(count)) : increase_round(Stitches(before));
    const int index = line_index(plan.lines, line);
    add_round(plan.rounds, {Section::toe, 1, count, index, index});
    before = count;
  }
}

// Each offset of the rib is worked out once: a long sock comes back to the same few lines.
class RibLines {
 public:
  explicit RibLines(Plan& plan)
      : plan_(plan), spans_(static_cast<std::size_t>(plan.rib.repeat())) {}

  void add_rounds(Section section, int rounds, int offset) {
    const int phase = offset % plan_.rib.repeat();
    RoundSpan& known = spans_[static_cast<std::size_t>(phase)];
    if (known.stitches == 0) known = worked_out(phase);
    add_round(plan_.rounds, {section, rounds, known.stitches, known.line, known.second_line});
  }

 private:
  RoundSpan worked_out(int phase) {
    const RoundLine line = rib_round(plan_.rib, plan_.stitches, phase);
    RoundSpan span;
    span.stitches = plan_.stitches.value();
    span.line = line_index(plan_.lines, line);
    span.second_line =
        plan_.rib.lean == Lean::mirrored ? line_index(plan_.lines, mirror_round(line)) : span.line;
    return span;
  }

  Plan& plan_;
  std::vector<RoundSpan> spans_;
};

}  // namespace

void plan_rounds(Plan& plan) {
  add_toe(plan);
  RibLines rib(plan);
  const int spiral = plan.length.spiral.value();
  for (int r = 0; r < spiral; ++r) rib.add_rounds(Section::spiral, 1, offset_in_round(plan.rib, r));
  // The cuff stands straight on the last round's offset, so that no rib jumps.
  const int cuff = plan.length.cuff.value();
  if (cuff > 0) rib.add_rounds(Section::cuff, cuff, offset_in_round(plan.rib, spiral - 1));
}

}  // namespace twinround

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

int second_index(Plan& plan, const RoundLine& line, int first_index, bool mirrored) {
  return mirrored ? line_index(plan.lines, mirror_round(line)) : first_index;
}

void add_toe(Plan& plan, ToeShape shape) {
  Stitches before = plan.toe.cast_on;
  for (std::size_t j = 0; j < plan.toe.counts.size(); ++j) {
    const RoundLine line = toe_round(before, plan.toe.sides[j]);
    const int index = line_index(plan.lines, line);
    const int second = second_index(plan, line, index, shape == ToeShape::left_right);
    before = Stitches(plan.toe.counts[j]);
    add_round(plan.rounds, {Section::toe, 1, before.value(), index, second});
  }
}

// Works its way up the rib: the phase moves with the spiral, the repeat grows with each widening.
class RibKnitter {
 public:
  explicit RibKnitter(Plan& plan) : plan_(plan), rib_{plan.rib.knit, plan.rib.purl, plan.stitches} {
    forget_lines();
  }

  void knit_spiral_round(int r) {
    const bool moves = r > 0 && offset_in_round(plan_.rib, r) != offset_in_round(plan_.rib, r - 1);
    if (moves) move_by_one();
    WideningStage* stage = widening_at(r);
    if (stage) {
      widen(*stage);
    } else {
      add_rounds(stage_reached_ ? Section::widening : Section::spiral, 1);
    }
  }

  // The cuff stands straight on the last round's phase, so that no rib jumps.
  void knit_cuff(int rounds) {
    if (rounds > 0) add_rounds(Section::cuff, rounds);
  }

 private:
  int repeat() const { return rib_.knit + rib_.purl; }
  bool mirrored() const { return plan_.rib.lean == Lean::mirrored; }

  WideningStage* widening_at(int r) {
    for (WideningStage& stage : plan_.widening) {
      if (stage.round == r) return &stage;
    }
    return nullptr;
  }

  void move_by_one() {
    const int step = plan_.rib.lean == Lean::right ? 1 : repeat() - 1;
    place_ = (place_ + step) % repeat();
  }

  void widen(WideningStage& stage) {
    const RoundLine line = widening_round(rib_, stage.rib, place_);
    stage.crossing = (stitches_after(line.first) - stitches_after(line.second)).value() / 2;
    const int index = line_index(plan_.lines, line);
    place_ = place_after(rib_, stage.rib, place_) % (stage.rib.knit + stage.rib.purl);
    rib_ = stage.rib;
    stage_reached_ = true;
    forget_lines();
    add_round(plan_.rounds, {Section::widening, 1, rib_.stitches.value(), index,
                             second_index(plan_, line, index, mirrored())});
  }

  // Each place of the repeat is worked out once: a long sock comes back to the same few lines.
  void forget_lines() { known_.assign(static_cast<std::size_t>(repeat()), RoundSpan{}); }

  void add_rounds(Section section, int rounds) {
    RoundSpan& known = known_[static_cast<std::size_t>(place_)];
    if (known.stitches == 0) {
      const RoundLine line = rib_line(rib_.knit, rib_.purl, rib_.stitches, place_);
      known.stitches = rib_.stitches.value();
      known.line = line_index(plan_.lines, line);
      known.second_line = second_index(plan_, line, known.line, mirrored());
    }
    add_round(plan_.rounds, {section, rounds, known.stitches, known.line, known.second_line});
  }

  Plan& plan_;
  WideRib rib_;
  int place_ = 0;  // of the round's first stitch, within the repeat
  bool stage_reached_ = false;
  std::vector<RoundSpan> known_;
};

}  // namespace

void plan_rounds(Plan& plan, ToeShape shape) {
  add_toe(plan, shape);
  RibKnitter knitter(plan);
  for (int r = 0; r < plan.length.spiral.value(); ++r) knitter.knit_spiral_round(r);
  knitter.knit_cuff(plan.length.cuff.value());
}

}  // namespace twinround

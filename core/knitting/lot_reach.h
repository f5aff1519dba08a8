// How far half a lot of yarn goes in one sock, from any round on.
#pragma once

#include "units.h"
#include "yarn_course.h"

namespace twinround {

class LotReach {
 public:
  // `margin` is kept over what the rounds take. The course outlives this.
  LotReach(const YarnCourse& course, double margin) : course_(course), margin_(margin) {}

  int all() const { return static_cast<int>(course_.rounds.size()); }

  // Of one sock, rounds `done` + 1 to `to` and two tails, the cast-on where it is among them; bound
  // off behind them or not. Without the margin.
  Length yarn(int done, int to, bool bind_off) const;
  bool does(Length half, int done, int to, bool bind_off) const;

  // The last round it gives, `most` at most; `done` where it gives none.
  int farthest(Length half, int done, int most, bool bind_off) const;
  // The same in a sock that reaches its edge: the last round is bound off with its own yarn, or is
  // left to the next lot.
  int on(Length half, int done) const;

  // Whether a join behind that round lies within toe or cuff. Elsewhere the sock is a spiral that
  // may change its colour anywhere, or one part ends there.
  bool is_inside(int round) const;

 private:
  const YarnCourse& course_;
  double margin_;
};

}  // namespace twinround

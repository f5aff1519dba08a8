// A sock so small that it is laid out by hand: 10 stitches of 10 mm, so 100 mm a round; toe 2
// rounds, rib 6, cuff 2. In metres: the tail and the cast-on 0.3, the rounds 1.0, the bind-off 0.3
// and the last tail 0.2; 1.8 in all.
#pragma once

#include "yarn_course.h"

namespace twinround::test {

inline Length metres(double m) {
  return Length::from_m(m);
}

inline SockInMaking ten_rounds_input() {
  SockInMaking input;
  input.rounds = {{Section::toe, 2, 10}, {Section::spiral, 6, 10}, {Section::cuff, 2, 10}};
  input.loop = Length::from_mm(10);
  input.cast_on = metres(0.1);
  input.bind_off = metres(0.3);
  input.tails = metres(0.4);
  return input;
}

inline YarnCourse ten_rounds() {
  return yarn_course(ten_rounds_input());
}

}  // namespace twinround::test

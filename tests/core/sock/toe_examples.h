// Toes to try: of any count, as long as a test asks.
#pragma once

#include "sock_examples.h"
#include "toe.h"

namespace twinround::test {

inline ToeInput toe_for(int stitches, double rounds_of_foot_quarter = 17) {
  ToeInput input;
  input.stitches = Stitches(stitches);
  // A foot of 4 rounds a millimetre's quarter: share 0.25 of it is `rounds_of_foot_quarter` rounds.
  input.foot_length = mm(240);
  input.gauge = RoundGauge::per_mm(rounds_of_foot_quarter / 60);
  return input;
}

}  // namespace twinround::test

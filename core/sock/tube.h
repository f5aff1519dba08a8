// The tube of knitting against the leg inside it: vocabulary shared by the files of this folder.
#pragma once

#include "units.h"

namespace twinround {

// A girth passes while it uses at most this share of the tube's geometric limit.
// ASSUMPTION, held against published sock tops that stretch to 15 or 16 in at 64 to 80 stitches.
inline constexpr double kPassUse = 0.85;
// Past this a knitter's own count "will not go over the heel". ASSUMPTION.
inline constexpr double kStuckUse = 0.95;
// A count is good when its ease lies within this of the ease asked for. ASSUMPTION.
inline constexpr double kEaseTolerance = 0.04;

// Ease a ribbed sock is worn with: outside of this it is told, never silent (10 % usual, 10 to 20 %
// common: trade rules).
inline constexpr double kTightestEase = -0.20;
inline constexpr double kLoosestEase = -0.02;

// The share of its own geometric limit that a tube of n stitches uses to pass a girth; over 1 it
// cannot. `widest_stitch` is one stitch pulled sideways as far as it goes.
inline double girth_use(Length girth, Stitches n, Length widest_stitch) {
  return girth.mm() / (n.value() * widest_stitch.mm());
}

// How much larger (+) or smaller (-) than the girth the tube is, laid flat in stockinette: -0.10 is
// 10 % negative ease.
inline double ease_of(Stitches n, Length girth, StitchGauge gauge) {
  return n.value() / (girth * gauge) - 1.0;
}

}  // namespace twinround

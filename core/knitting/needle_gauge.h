// The toe is the best swatch: what is measured on the needles, weighed with what was swatched.
#pragma once

#include <optional>

#include "gauge.h"

namespace twinround {

// A stretch of the toe, in the round and in stockinette, laid flat: stitches across one layer and
// the width they take, rounds and the length they take. Either pair may be left out, not both.
struct NeedleReading {
  std::optional<double> stitches, rounds;
  std::optional<Length> width, height;
};

// Two measurements of one gauge, each weighed by the inverse of its variance: the mean, and how
// sure it is. Precondition: both errors above 0.
struct Weighed {
  double value = 0;
  double error = 0;  // relative standard error
};
Weighed weighed_mean(Weighed a, Weighed b);

// The gauge of the swatch (or of the label) and of the toe together, or of the toe alone; `apart`
// how many standard errors they lie from each other, the larger of stitches and rounds. A toe on
// the needle was never washed: its errors widen as an unwashed swatch's do.
struct NeedleGauge {
  Gauge gauge;
  Gauge toe;                                      // what it does not say stands as planned
  Reading reading;                                // the same, as a swatch's
  bool has_stitches = false, has_rounds = false;  // measured on the toe
  double apart = 0;
  bool is_apart = false;      // by more than one fabric allows; never of a swatch of another yarn
  bool by_toe_alone = false;  // what was measured is the toe's, with the toe's own errors
};
// `is_swatch_foreign`: the swatch is none of this yarn, and the toe counts alone however near it
// lies.
NeedleGauge gauge_on_needles(const Gauge& planned, const NeedleReading& toe,
                             bool is_swatch_foreign = false);

// More than that apart, the two are not measurements of one fabric, and the toe counts alone: the
// sock is made of it. Two standard errors.
inline constexpr double kApart = 2;

}  // namespace twinround

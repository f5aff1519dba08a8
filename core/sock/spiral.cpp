#include "spiral.h"

#include <cmath>

namespace twinround {

namespace {

int non_negative_remainder(int value, int modulus) {
  const int remainder = value % modulus;
  return remainder < 0 ? remainder + modulus : remainder;
}

HalfLine rib_half(const Rib& rib, int first_stitch, int stitches, int moved) {
  HalfLine half;
  for (int i = first_stitch; i < first_stitch + stitches; ++i) {
    const bool knit = non_negative_remainder(i - moved, rib.repeat()) < rib.knit;
    append_run(half, knit ? Work::knit : Work::purl, 1);
  }
  return half;
}

}  // namespace

RoundLine rib_round(const Rib& rib, Stitches n, int offset) {
  const int moved = rib.lean == Lean::right ? -offset : offset;
  const int half = n.value() / 2;
  return {rib_half(rib, 0, half, moved), rib_half(rib, half, half, moved)};
}

int offset_in_round(const Rib& rib, int r) {
  return rib.rounds_per_shift == 0 ? 0 : r / rib.rounds_per_shift;
}

RoundLine mirror_round(const RoundLine& line) {
  return {read_backwards(line.first), read_backwards(line.second)};
}

Rounds period(const Rib& rib) {
  return Rounds(rib.rounds_per_shift == 0 ? 1 : rib.repeat() * rib.rounds_per_shift);
}

Angle pitch(const Rib& rib, StitchGauge stitches, RoundGauge rounds) {
  if (!rib.leans()) return Angle::from_radians(0);
  const double sideways = 1.0 / stitches.per_mm();
  const double upwards = rib.rounds_per_shift / rounds.per_mm();
  return Angle::from_radians(std::atan(sideways / upwards));
}

}  // namespace twinround

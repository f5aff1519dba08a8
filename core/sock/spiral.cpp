#include "spiral.h"

#include <cmath>

namespace twinround {

namespace {

int non_negative_remainder(int value, int modulus) {
  const int remainder = value % modulus;
  return remainder < 0 ? remainder + modulus : remainder;
}

HalfLine rib_half(int knit, int repeat, int stitches, int place) {
  HalfLine half;
  for (int i = 0; i < stitches; ++i) {
    const bool is_knit = non_negative_remainder(i + place, repeat) < knit;
    append_run(half, is_knit ? Work::knit : Work::purl, 1);
  }
  return half;
}

}  // namespace

int first_place(const Rib& rib, int offset) {
  return non_negative_remainder(rib.lean == Lean::right ? offset : -offset, rib.repeat());
}

RoundLine rib_line(int knit, int purl, Stitches n, int place) {
  const int half = n.value() / 2;
  return {rib_half(knit, knit + purl, half, place),
          rib_half(knit, knit + purl, half, place + half)};
}

RoundLine rib_round(const Rib& rib, Stitches n, int offset) {
  return rib_line(rib.knit, rib.purl, n, first_place(rib, offset));
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

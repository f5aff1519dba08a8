#include "needle_gauge.h"

#include <algorithm>
#include <cmath>

#include "quadrature.h"

namespace twinround {
namespace {

double variance(Weighed one) {
  const double sigma = one.value * one.error;
  return sigma * sigma;
}

double errors_apart(Weighed a, Weighed b) {
  return std::abs(a.value - b.value) / std::sqrt(variance(a) + variance(b));
}

}  // namespace

Weighed weighed_mean(Weighed a, Weighed b) {
  const double of_a = 1 / variance(a);
  const double of_b = 1 / variance(b);
  const double mean = (a.value * of_a + b.value * of_b) / (of_a + of_b);
  return {mean, std::sqrt(1 / (of_a + of_b)) / mean};
}

NeedleGauge gauge_on_needles(const Gauge& planned, const NeedleReading& toe) {
  NeedleGauge both;
  // A toe without its rounds says nothing of them: then the plan's stand.
  NeedleReading measured = toe;
  const bool has_rounds = toe.rounds && toe.height;
  if (!has_rounds) {
    measured.rounds = planned.rounds * toe.width;
    measured.height = toe.width;
  }
  const bool is_washed = false;
  both.toe = gauge_from_readings({measured}, is_washed);
  both.gauge = planned;

  const Weighed swatch_across{planned.stitches.per_mm(), planned.stitches_error};
  const Weighed toe_across{both.toe.stitches.per_mm(), both.toe.stitches_error};
  const Weighed across = weighed_mean(swatch_across, toe_across);
  both.gauge.stitches = StitchGauge::per_mm(across.value);
  both.gauge.stitches_error = across.error;
  both.apart = errors_apart(swatch_across, toe_across);
  if (!has_rounds) return both;

  const Weighed swatch_up{planned.rounds.per_mm(), planned.rounds_error};
  const Weighed toe_up{both.toe.rounds.per_mm(), both.toe.rounds_error};
  const Weighed up = weighed_mean(swatch_up, toe_up);
  both.gauge.rounds = RoundGauge::per_mm(up.value);
  both.gauge.rounds_error = up.error;
  both.apart = std::max(both.apart, errors_apart(swatch_up, toe_up));
  return both;
}

}  // namespace twinround

#include "needle_gauge.h"

#include <algorithm>
#include <cmath>

#include "quadrature.h"

namespace twinround {
namespace {

constexpr Length kAnyLength = Length::from_cm(10);

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

NeedleGauge gauge_on_needles(const Gauge& planned, const NeedleReading& toe,
                             bool is_swatch_foreign) {
  NeedleGauge both;
  both.has_stitches = toe.stitches && toe.width;
  both.has_rounds = toe.rounds && toe.height;
  // Of what it does not say it is taken to be as planned, over a length of its own.
  Reading measured;
  measured.width = both.has_stitches ? *toe.width : toe.height.value_or(kAnyLength);
  measured.height = both.has_rounds ? *toe.height : measured.width;
  measured.stitches = both.has_stitches ? *toe.stitches : planned.stitches * measured.width;
  measured.rounds = both.has_rounds ? *toe.rounds : planned.rounds * *measured.height;
  const bool is_washed = false;
  both.toe = gauge_from_readings({measured}, is_washed);
  both.reading = measured;
  both.gauge = planned;

  const Weighed across{planned.stitches.per_mm(), planned.stitches_error};
  const Weighed toe_across{both.toe.stitches.per_mm(), both.toe.stitches_error};
  const Weighed up{planned.rounds.per_mm(), planned.rounds_error};
  const Weighed toe_up{both.toe.rounds.per_mm(), both.toe.rounds_error};
  if (both.has_stitches) both.apart = errors_apart(across, toe_across);
  if (both.has_rounds) both.apart = std::max(both.apart, errors_apart(up, toe_up));
  both.is_apart = !is_swatch_foreign && both.apart > kApart;
  both.by_toe_alone = is_swatch_foreign || both.is_apart;

  if (both.by_toe_alone && both.has_stitches) both.gauge.source = both.toe.source;
  if (both.has_stitches) {
    const Weighed known = both.by_toe_alone ? toe_across : weighed_mean(across, toe_across);
    both.gauge.stitches = StitchGauge::per_mm(known.value);
    both.gauge.stitches_error = known.error;
  }
  if (both.has_rounds) {
    const Weighed known = both.by_toe_alone ? toe_up : weighed_mean(up, toe_up);
    both.gauge.rounds = RoundGauge::per_mm(known.value);
    both.gauge.rounds_error = known.error;
  }
  return both;
}

}  // namespace twinround

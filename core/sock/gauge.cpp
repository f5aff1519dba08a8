#include "gauge.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "quadrature.h"

namespace twinround {

namespace {

// One direction of the swatch: how many, over what length.
struct Counted {
  double count = 0;
  Length along;
};

std::vector<Counted> stitches_of(const std::vector<Reading>& readings) {
  std::vector<Counted> counted;
  counted.reserve(readings.size());
  for (const Reading& reading : readings) counted.push_back({reading.stitches, reading.width});
  return counted;
}

std::vector<Counted> rounds_of(const std::vector<Reading>& readings) {
  std::vector<Counted> counted;
  for (const Reading& reading : readings) {
    if (reading.rounds && reading.height) counted.push_back({*reading.rounds, *reading.height});
  }
  return counted;
}

Counted pooled(const std::vector<Counted>& readings) {
  Counted sum;
  for (const Counted& reading : readings) {
    sum.count += reading.count;
    sum.along = sum.along + reading.along;
  }
  return sum;
}

double scatter(const std::vector<Counted>& readings) {
  const std::size_t n = readings.size();
  if (n < 2) return 0;
  double mean = 0;
  for (const Counted& reading : readings) mean += reading.count / reading.along.mm();
  mean /= static_cast<double>(n);
  double squares = 0;
  for (const Counted& reading : readings) {
    const double off = reading.count / reading.along.mm() - mean;
    squares += off * off;
  }
  return std::sqrt(squares / static_cast<double>(n - 1)) / mean;
}

// sqrt(max(cv, 0.02)^2/n + q^2), q = 0.204 sqrt(n)/sum: scatter falls with more readings, and so do
// the uncertain ends of each, which add in quadrature.
double pooled_error(const std::vector<Counted>& readings, double cv) {
  const double n = static_cast<double>(readings.size());
  const double place = std::max(cv, kLeastScatter);
  const double ends = kEndError * std::sqrt(n) / pooled(readings).count;
  return in_quadrature(place / std::sqrt(n), ends);
}

}  // namespace

double stitch_scatter(const std::vector<Reading>& readings) {
  return scatter(stitches_of(readings));
}

double round_scatter(const std::vector<Reading>& readings) {
  return scatter(rounds_of(readings));
}

std::vector<ReadingGauge> gauge_of_each(const std::vector<Reading>& readings, double contraction) {
  std::vector<ReadingGauge> gauges;
  for (const Reading& reading : readings) {
    ReadingGauge gauge{StitchGauge::per(reading.stitches, reading.width) * contraction, {}};
    if (reading.rounds && reading.height) {
      gauge.rounds = RoundGauge::per(*reading.rounds, *reading.height);
    }
    gauges.push_back(gauge);
  }
  return gauges;
}

Gauge gauge_from_readings(const std::vector<Reading>& readings, bool washed) {
  const std::vector<Counted> across = stitches_of(readings);
  const std::vector<Counted> up = rounds_of(readings);
  const Counted stitches = pooled(across);
  const Counted rounds = pooled(up);
  Gauge gauge;
  gauge.stitches = StitchGauge::per(stitches.count, stitches.along);
  gauge.rounds = RoundGauge::per(rounds.count, rounds.along);
  gauge.stitches_error =
      in_quadrature(pooled_error(across, scatter(across)), washed ? 0 : kUnwashedStitchError);
  gauge.rounds_error =
      in_quadrature(pooled_error(up, scatter(up)), washed ? 0 : kUnwashedRoundError);
  gauge.source = GaugeSource::swatch;
  return gauge;
}

Gauge gauge_from_rib(const Gauge& rib_gauge, double contraction, double contraction_error) {
  Gauge gauge = rib_gauge;
  gauge.stitches = rib_gauge.stitches * contraction;
  gauge.stitches_error = in_quadrature(rib_gauge.stitches_error, contraction_error);
  gauge.source = GaugeSource::rib_swatch;
  return gauge;
}

Gauge gauge_from_label(const YarnCategory& category) {
  Gauge gauge;
  gauge.stitches = StitchGauge::per(category.stitches_hi, kGaugeWidth);
  gauge.rounds = RoundGauge::per_mm(kRoundsPerStitch * gauge.stitches.per_mm());
  gauge.stitches_error = label_error(category);
  gauge.rounds_error = label_error(category);
  gauge.source = GaugeSource::label;
  return gauge;
}

}  // namespace twinround

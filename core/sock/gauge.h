// From swatch readings, or a yarn label, to a gauge that says how sure it is.
#pragma once

#include <optional>
#include <vector>

#include "units.h"
#include "yarn_category.h"

namespace twinround {

enum class Fabric { stockinette, rib };
enum class GaugeSource { swatch, rib_swatch, label };

// One measurement of the swatch. Counts may carry quarters; rounds and height come together or not
// at all.
struct Reading {
  double stitches = 0;
  Length width;
  std::optional<double> rounds;
  std::optional<Length> height;
};

// Stockinette gauge in the yarn and on the needles of the sock. Errors are relative standard
// errors.
struct Gauge {
  StitchGauge stitches;
  RoundGauge rounds;
  double stitches_error = 0;
  double rounds_error = 0;
  GaugeSource source = GaugeSource::swatch;
};

// Rounds per length of stockinette over stitches per length, for a yarn not yet swatched.
// ASSUMPTION.
inline constexpr double kRoundsPerStitch = 1.4;

// One reading's own gauge; rounds where it has them.
struct ReadingGauge {
  StitchGauge stitches;
  std::optional<RoundGauge> rounds;
};

// Each reading's gauge, in order, with its stitches turned to stockinette by `contraction` (1 for
// stockinette).
std::vector<ReadingGauge> gauge_of_each(const std::vector<Reading>& readings, double contraction);

// Pooled over the readings: sum of stitches over sum of widths, likewise rounds. Precondition: one
// reading at least, and one with rounds. An unwashed swatch moves no count; it widens the errors by
// what washing may change.
Gauge gauge_from_readings(const std::vector<Reading>& readings, bool washed);

// A swatch knit in the sock's own rib, relaxed, turned to stockinette by the rib's contraction.
// `contraction_error` is relative.
Gauge gauge_from_rib(const Gauge& rib_gauge, double contraction, double contraction_error);

// No swatch: the dense end of the category's range.
Gauge gauge_from_label(const YarnCategory& category);

// A gauge counted over the ends of a window is off by about a quarter stitch at each end, taken as
// uniform.
inline constexpr double kEndError = 0.204;  // sqrt(2) x 0.5/sqrt(12), in stitches
// No hand and no ruler does better than this from place to place. ASSUMPTION.
inline constexpr double kLeastScatter = 0.02;
// What washing may still change in an unwashed swatch: Munden's kw runs from 3.8 (dry) to 4.1 (wet
// relaxed; 1959, from memory) and kc from 5.0 to 5.3; taken as uniform over that span,
// (4.1 - 3.8)/(2 sqrt(3) x 3.95) and (5.3 - 5.0)/(2 sqrt(3) x 5.15). ASSUMPTION.
inline constexpr double kUnwashedStitchError = 0.0219246938;
inline constexpr double kUnwashedRoundError = 0.0168160273;

// Coefficient of variation of the readings' own gauges (n - 1; 0 for one reading): first the
// stitches, then the rounds.
double stitch_scatter(const std::vector<Reading>& readings);
double round_scatter(const std::vector<Reading>& readings);

}  // namespace twinround

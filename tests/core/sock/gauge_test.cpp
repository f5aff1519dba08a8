#include "gauge.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::reading;
using test::reading_across;

TEST(Gauge, OneReadingIsTheGauge) {
  const Gauge gauge = gauge_from_readings({reading(20, 101.6, 28, 101.6)}, true);
  EXPECT_DOUBLE_EQ(gauge.stitches.per_mm(), 20 / 101.6);
  EXPECT_DOUBLE_EQ(gauge.rounds.per_mm(), 28 / 101.6);
  EXPECT_EQ(gauge.source, GaugeSource::swatch);
}

TEST(Gauge, PoolsSumsAndNotTheMeanOfGauges) {
  // 30 stitches over 150 mm is 0.2 a mm; the mean of 0.18 and 0.24 would be 0.21.
  const Gauge gauge =
      gauge_from_readings({reading(18, 100, 25, 100), reading(12, 50, 20, 50)}, true);
  EXPECT_DOUBLE_EQ(gauge.stitches.per_mm(), 0.2);
  EXPECT_DOUBLE_EQ(gauge.rounds.per_mm(), 0.3);  // 45 over 150
}

TEST(Gauge, TakesRoundsFromTheReadingsThatHaveThem) {
  const Gauge gauge = gauge_from_readings(
      {reading_across(20, 100), reading(22, 100, 30, 120), reading_across(21, 100)}, true);
  EXPECT_DOUBLE_EQ(gauge.stitches.per_mm(), 63.0 / 300.0);
  EXPECT_DOUBLE_EQ(gauge.rounds.per_mm(), 30.0 / 120.0);
  // One reading of rounds: sqrt(0.02^2 + (0.204/30)^2) = 0.021124.
  EXPECT_NEAR(gauge.rounds_error, 0.0211244, 5e-8);
}

TEST(Gauge, ErrorOfOneReadingIsItsPlaceAndItsEnds) {
  const Gauge gauge = gauge_from_readings({reading(20, 101.6, 28, 101.6)}, true);
  // sqrt(0.02^2/1 + (0.204 x 1/20)^2) = sqrt(0.0004 + 0.00010404) = 0.0224508
  EXPECT_NEAR(gauge.stitches_error, 0.0224508, 5e-8);
  // sqrt(0.02^2/1 + (0.204 x 1/28)^2) = sqrt(0.0004 + 0.0000530816) = 0.0212857
  EXPECT_NEAR(gauge.rounds_error, 0.0212857, 5e-8);
}

TEST(Gauge, ErrorFallsWithEveryReadingAdded) {
  std::vector<Reading> readings;
  double before = 1;
  for (int n = 1; n <= 12; ++n) {
    readings.push_back(reading(20, 101.6, 28, 101.6));
    const Gauge gauge = gauge_from_readings(readings, true);
    // n equal readings: cv 0, so 0.02/sqrt(n); q = 0.204 sqrt(n)/(20 n); together
    // 0.0224508/sqrt(n).
    EXPECT_NEAR(gauge.stitches_error, 0.0224508 / std::sqrt(n), 5e-8) << n << " readings";
    EXPECT_LT(gauge.stitches_error, before);
    before = gauge.stitches_error;
  }
}

struct Pair {
  double first = 0;
  double second = 0;
  double cv = 0;     // |first - second|/sqrt(2) over their mean
  double place = 0;  // what counts: at least 0.02
};

TEST(Gauge, ScatterUnderTwoPercentCountsAsTwo) {
  const std::vector<Pair> pairs = {
      {100, 100, 0.0, 0.02},
      {101.4, 98.6, 0.0197990, 0.02},         // 2.8/sqrt(2)/100
      {101.42, 98.58, 0.0200818, 0.0200818},  // 2.84/sqrt(2)/100
      {104, 96, 0.0565685, 0.0565685},        // 8/sqrt(2)/100
  };
  for (const Pair& pair : pairs) {
    SCOPED_TRACE(pair.first);
    const std::vector<Reading> readings = {reading(pair.first, 100, 100, 100),
                                           reading(pair.second, 100, 100, 100)};
    EXPECT_NEAR(stitch_scatter(readings), pair.cv, 5e-8);
    EXPECT_NEAR(round_scatter(readings), 0.0, 1e-15);
    // q = 0.204 sqrt(2)/200 = 0.00144250
    const double expected = std::sqrt(pair.place * pair.place / 2 + 0.0014425 * 0.0014425);
    EXPECT_NEAR(gauge_from_readings(readings, true).stitches_error, expected, 5e-8);
  }
}

TEST(Gauge, FourPublishedReadingsScatterByNineteenPerMille) {
  // Four readings of one swatch over 3 in: 17, 17.25, 17, 16.5; their variation is 1.9 %, as
  // published with them. Mean 16.9375, squares 0.0625^2 x 2 + 0.3125^2 + 0.4375^2 = 0.296875,
  // SD sqrt(0.296875/3) = 0.314576.
  const std::vector<Reading> readings = {
      reading(17, 76.2, 24, 76.2), reading(17.25, 76.2, 24, 76.2), reading(17, 76.2, 24, 76.2),
      reading(16.5, 76.2, 24, 76.2)};
  EXPECT_NEAR(stitch_scatter(readings), 0.0185728, 5e-8);
  EXPECT_NEAR(stitch_scatter(readings), 0.019, 0.0005);
}

TEST(Gauge, OneReadingHasNoScatter) {
  EXPECT_EQ(stitch_scatter({reading(20, 100, 28, 100)}), 0);
  EXPECT_EQ(round_scatter({reading(20, 100, 28, 100)}), 0);
}

TEST(Gauge, AnUnwashedSwatchMovesNoGaugeAndIsLessSure) {
  const std::vector<Reading> readings = {reading(22, 101.6, 34, 101.6)};
  const Gauge washed = gauge_from_readings(readings, true);
  const Gauge unwashed = gauge_from_readings(readings, false);
  EXPECT_EQ(unwashed.stitches.per_mm(), washed.stitches.per_mm());
  EXPECT_EQ(unwashed.rounds.per_mm(), washed.rounds.per_mm());
  EXPECT_GT(unwashed.stitches_error, washed.stitches_error);
  EXPECT_GT(unwashed.rounds_error, washed.rounds_error);
  // Washing is unknown over Munden's kw 3.8 to 4.1: 0.3/(2 sqrt(3) x 3.95) = 0.0219246, added to
  // sqrt(0.02^2 + (0.204/22)^2) = 0.0220451 in quadrature.
  EXPECT_NEAR(unwashed.stitches_error, 0.0310914, 5e-8);
  // kc 5.0 to 5.3: 0.3/(2 sqrt(3) x 5.15) = 0.0168159, to sqrt(0.02^2 + (0.204/34)^2) = 0.0208806.
  EXPECT_NEAR(unwashed.rounds_error, 0.0268100, 5e-8);
}

TEST(Gauge, ARibSwatchIsTurnedToStockinetteAcrossButNotUp) {
  const Gauge rib = gauge_from_readings({reading(28, 100, 30, 100)}, true);
  const Gauge plain = gauge_from_rib(rib, 0.7, 0.10);
  EXPECT_DOUBLE_EQ(plain.stitches.per_mm(), 0.28 * 0.7);
  EXPECT_DOUBLE_EQ(plain.rounds.per_mm(), 0.30);
  EXPECT_EQ(plain.source, GaugeSource::rib_swatch);
  // sqrt(0.02^2 + (0.204/28)^2) = 0.0212857 with 0.10 in quadrature.
  EXPECT_NEAR(plain.stitches_error, 0.1022403, 5e-8);
  EXPECT_DOUBLE_EQ(plain.rounds_error, rib.rounds_error);
}

TEST(Gauge, AKnownContractionAddsNoError) {
  const Gauge rib = gauge_from_readings({reading(28, 100, 30, 100)}, true);
  EXPECT_DOUBLE_EQ(gauge_from_rib(rib, 1.0, 0.0).stitches_error, rib.stitches_error);
}

TEST(Gauge, ALabelMeansTheDenseEndOfItsRange) {
  // A sock is knit firm or it wears through: 40, 32, 26, 24, 20, 15, 11, 6 over 4 in.
  const std::vector<double> dense = {40, 32, 26, 24, 20, 15, 11, 6};
  ASSERT_EQ(yarn_categories().size(), dense.size());
  for (const YarnCategory& category : yarn_categories()) {
    SCOPED_TRACE(category.name);
    const Gauge gauge = gauge_from_label(category);
    const double expected = dense[static_cast<std::size_t>(category.number)] / 101.6;
    EXPECT_DOUBLE_EQ(gauge.stitches.per_mm(), expected);
    EXPECT_NEAR(gauge.rounds.per_mm(), 1.4 * expected, 1e-15);
    EXPECT_EQ(gauge.source, GaugeSource::label);
  }
}

TEST(Gauge, ALabelIsAsUnsureAsItsRangeIsWide) {
  // Category 4, 16 to 20: (20 - 16)/(2 sqrt(3) x 18) = 0.0641500; category 1, 27 to 32: 0.0489280.
  EXPECT_NEAR(gauge_from_label(*yarn_category(4)).stitches_error, 0.0641500, 5e-8);
  EXPECT_NEAR(gauge_from_label(*yarn_category(4)).rounds_error, 0.0641500, 5e-8);
  EXPECT_NEAR(gauge_from_label(*yarn_category(1)).stitches_error, 0.0489280, 5e-8);
}

}  // namespace
}  // namespace twinround

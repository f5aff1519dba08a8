#include "feet.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

namespace twinround {
namespace {

constexpr std::size_t kRows = kFootMeasures;

// The 95th percentile of a normal curve, in standard deviations.
constexpr double kZ95 = 1.645;

struct Sex {
  const char* name;
  const AdultFeet& feet;
};
std::vector<Sex> both_sexes() {
  return {{"men", men_feet()}, {"women", women_feet()}};
}

// ANSUR II, US Army 2012, computed from its public data file. Sums down the columns of the table
// and over the 15 correlations, added up from the publication and not from our rows: a slip of the
// pen in any one figure breaks its sum.
TEST(Feet, EveryColumnOfTheAdultTableAddsUp) {
  struct Sums {
    const Sex sex;
    int n;
    double mean, sd, p1, p5, p50, p95, p99, correlation;
  };
  const std::vector<Sums> published = {
      {{"men", men_feet()}, 4082, 1561.17, 92.69, 1361, 1415, 1559, 1718, 1793, 8.284},
      {{"women", women_feet()}, 1986, 1436.47, 88.04, 1248, 1297, 1433, 1589, 1663, 7.769},
  };
  for (const Sums& sums : published) {
    SCOPED_TRACE(sums.sex.name);
    const AdultFeet& feet = sums.sex.feet;
    MeasureRow total;
    double correlation = 0;
    for (std::size_t i = 0; i < kRows; ++i) {
      total.mean += feet.rows[i].mean;
      total.sd += feet.rows[i].sd;
      total.p1 += feet.rows[i].p1;
      total.p5 += feet.rows[i].p5;
      total.p50 += feet.rows[i].p50;
      total.p95 += feet.rows[i].p95;
      total.p99 += feet.rows[i].p99;
      for (std::size_t j = i + 1; j < kRows; ++j) correlation += feet.correlation[i][j];
    }
    EXPECT_EQ(feet.n, sums.n);
    EXPECT_NEAR(total.mean, sums.mean, 1e-9);
    EXPECT_NEAR(total.sd, sums.sd, 1e-9);
    EXPECT_EQ(total.p1, sums.p1);
    EXPECT_EQ(total.p5, sums.p5);
    EXPECT_EQ(total.p50, sums.p50);
    EXPECT_EQ(total.p95, sums.p95);
    EXPECT_EQ(total.p99, sums.p99);
    EXPECT_NEAR(correlation, sums.correlation, 1e-9);
  }
}

TEST(Feet, RowsAreFoundByTheNameOfTheMeasure) {
  struct Row {
    FootMeasure measure;
    double men_mean;
    double women_mean;
  };
  const std::vector<Row> published = {
      {FootMeasure::foot_length, 271.18, 246.29},      {FootMeasure::ball_girth, 252.02, 228.11},
      {FootMeasure::heel_ankle_girth, 343.47, 310.32}, {FootMeasure::ankle_girth, 229.34, 215.74},
      {FootMeasure::calf_girth, 392.26, 373.26},       {FootMeasure::bone_height, 72.90, 62.75},
  };
  for (const Row& row : published) {
    EXPECT_EQ(men_feet().row(row.measure).mean, row.men_mean);
    EXPECT_EQ(women_feet().row(row.measure).mean, row.women_mean);
  }
}

TEST(Feet, PercentilesRiseAlongEveryRow) {
  for (const Sex& sex : both_sexes()) {
    for (const MeasureRow& row : sex.feet.rows) {
      SCOPED_TRACE(testing::Message() << sex.name << ", mean " << row.mean);
      EXPECT_LT(row.p1, row.p5);
      EXPECT_LT(row.p5, row.p50);
      EXPECT_LT(row.p50, row.p95);
      EXPECT_LT(row.p95, row.p99);
      EXPECT_GT(row.sd, 0.0);
    }
  }
}

// ANSUR II: where a population is treated as normal, its middle nine tenths must be right. All 24
// hold; the furthest off are the calves, -2.6 (men's p5) and -2.8 (women's p95).
TEST(Feet, ANormalCurveMeetsTheFifthAndNinetyFifthPercentileWithin3Millimetres) {
  for (const Sex& sex : both_sexes()) {
    for (const MeasureRow& row : sex.feet.rows) {
      SCOPED_TRACE(testing::Message() << sex.name << ", mean " << row.mean);
      EXPECT_NEAR(row.mean - kZ95 * row.sd, row.p5, 3.0);
      EXPECT_NEAR(row.mean + kZ95 * row.sd, row.p95, 3.0);
    }
  }
}

TEST(Feet, TheMeanIsTheMedianWithin1Point5Millimetres) {
  for (const Sex& sex : both_sexes()) {
    for (const MeasureRow& row : sex.feet.rows) EXPECT_NEAR(row.mean, row.p50, 1.5) << sex.name;
  }
}

// ANSUR II: the outermost hundredths are NOT those of a normal curve: lengths and feet within 3 mm,
// ankles and calves not. What the curve says less what was measured, mm; a plan for many feet must
// not trust the curve out there.
TEST(Feet, ANormalCurveMissesTheOutermostHundredthOfAnklesAndCalves) {
  struct Miss {
    FootMeasure measure;
    double men_p1, men_p99, women_p1, women_p99;
  };
  const std::vector<Miss> known = {
      {FootMeasure::foot_length, -1.29, -0.35, -1.65, -0.77},
      {FootMeasure::ball_girth, -2.08, -1.88, -2.27, -1.51},
      {FootMeasure::heel_ankle_girth, -2.19, -2.87, -2.30, -2.06},
      {FootMeasure::ankle_girth, -2.74, -4.58, -3.90, -4.62},
      {FootMeasure::calf_girth, -6.85, -5.63, -6.09, -12.39},
      {FootMeasure::bone_height, -0.29, -0.91, -0.14, -0.36},
  };
  constexpr double kZ99 = 2.3263;
  for (const Miss& miss : known) {
    const MeasureRow& man = men_feet().row(miss.measure);
    const MeasureRow& woman = women_feet().row(miss.measure);
    SCOPED_TRACE(testing::Message() << "men's mean " << man.mean);
    EXPECT_NEAR(man.mean - kZ99 * man.sd - man.p1, miss.men_p1, 0.006);
    EXPECT_NEAR(man.mean + kZ99 * man.sd - man.p99, miss.men_p99, 0.006);
    EXPECT_NEAR(woman.mean - kZ99 * woman.sd - woman.p1, miss.women_p1, 0.006);
    EXPECT_NEAR(woman.mean + kZ99 * woman.sd - woman.p99, miss.women_p99, 0.006);
  }
}

TEST(Feet, CorrelationsReadTheSameBothWaysAndAreOneWithThemselves) {
  for (const Sex& sex : both_sexes()) {
    SCOPED_TRACE(sex.name);
    for (std::size_t i = 0; i < kRows; ++i) {
      EXPECT_EQ(sex.feet.correlation[i][i], 1.0);
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_EQ(sex.feet.correlation[i][j], sex.feet.correlation[j][i]);
        EXPECT_GT(sex.feet.correlation[i][j], 0.0);
        EXPECT_LT(sex.feet.correlation[i][j], 1.0);
      }
    }
  }
}

// One from each row of the published triangle: a matrix filled in the wrong order would show.
TEST(Feet, CorrelationsStandWhereTheyWerePublished) {
  using M = FootMeasure;
  struct Pair {
    M a, b;
    double men, women;
  };
  const std::vector<Pair> published = {
      {M::foot_length, M::ball_girth, .597, .606},
      {M::foot_length, M::heel_ankle_girth, .794, .803},
      {M::foot_length, M::bone_height, .333, .310},
      {M::ball_girth, M::heel_ankle_girth, .747, .739},
      {M::ball_girth, M::bone_height, .377, .351},
      {M::heel_ankle_girth, M::ankle_girth, .719, .645},
      {M::ankle_girth, M::calf_girth, .816, .766},
      {M::ankle_girth, M::bone_height, .349, .313},
      {M::calf_girth, M::bone_height, .306, .253},
  };
  for (const Pair& pair : published) {
    EXPECT_EQ(men_feet().correlation_of(pair.a, pair.b), pair.men);
    EXPECT_EQ(men_feet().correlation_of(pair.b, pair.a), pair.men);
    EXPECT_EQ(women_feet().correlation_of(pair.a, pair.b), pair.women);
  }
}

// Cholesky's pivots: all above nothing exactly when real people could have these correlations.
TEST(Feet, CorrelationsArePositiveDefinite) {
  for (const Sex& sex : both_sexes()) {
    SCOPED_TRACE(sex.name);
    std::array<std::array<double, kRows>, kRows> lower{};
    for (std::size_t i = 0; i < kRows; ++i) {
      for (std::size_t j = 0; j <= i; ++j) {
        double left = sex.feet.correlation[i][j];
        for (std::size_t k = 0; k < j; ++k) left -= lower[i][k] * lower[j][k];
        if (i == j) {
          // The share of this measure that the ones before it do not explain: a tenth at least.
          ASSERT_GT(left, 0.1) << "pivot " << i;
          lower[i][i] = std::sqrt(left);
        } else {
          lower[i][j] = left / lower[j][j];
        }
      }
    }
  }
}

}  // namespace
}  // namespace twinround

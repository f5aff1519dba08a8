#include "fabric.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;

const StitchGauge kStitches = StitchGauge::per(20, mm(101.6));
const RoundGauge kRounds = RoundGauge::per(28, mm(101.6));

TEST(Fabric, LoopLengthFollowsTheGaugeAndTheWash) {
  // 10 sqrt(ks/(100 g_s g_r)) with g_s g_r = 560/101.6^2 = 0.0542502:
  // washed sqrt(21.6/0.0542502) = 19.9538 mm, unwashed sqrt(19.0/0.0542502) = 18.7144 mm.
  EXPECT_NEAR(loop_length(kStitches, kRounds, kStitchDensityWashed).mm(), 19.95384, 5e-6);
  EXPECT_NEAR(loop_length(kStitches, kRounds, kStitchDensityUnwashed).mm(), 18.71443, 5e-6);
}

TEST(Fabric, StitchDensityIsTheInverseOfLoopLength) {
  for (const double ks : {19.0, 21.6, 23.1}) {
    const Length loop = loop_length(kStitches, kRounds, ks);
    EXPECT_NEAR(stitch_density_per_mm2(loop, ks), kStitches.per_mm() * kRounds.per_mm(), 1e-15);
  }
}

TEST(Fabric, AWeighedSwatchTellsTheLoopByItsMass) {
  // 5.6 g in 560 stitches is 0.01 g a stitch; 2 m a gram: 20 mm.
  EXPECT_NEAR(
      weighed_loop_length(Mass::from_g(5.6), 560, Length::from_m(200), Mass::from_g(100)).mm(), 20,
      1e-12);
  // Half the ball for the same metres: twice the metres a gram.
  EXPECT_NEAR(
      weighed_loop_length(Mass::from_g(5.6), 560, Length::from_m(200), Mass::from_g(50)).mm(), 40,
      1e-12);
}

TEST(Fabric, AStitchSpansAtMostHalfItsYarn) {
  EXPECT_DOUBLE_EQ(widest_stitch(mm(20)).mm(), 10);
}

struct Rest {
  int knit = 0;
  int purl = 0;
  double factor = 0;
  double error = 0;
};

TEST(Fabric, ARibPullsInByItsEdges) {
  // (k + p - 2 t)/(k + p), t = 0.3 x min(k, p, 2).
  const std::vector<Rest> ribs = {
      {1, 1, 0.70, 0},           // (2 - 0.6)/2: Spencer's figure, so no error of ours
      {2, 2, 0.70, 0.10},        // (4 - 1.2)/4
      {1, 2, 0.80, 0.10},        // (3 - 0.6)/3
      {2, 1, 0.80, 0.10},        // the same the other way about
      {1, 3, 0.85, 0.10},        // (4 - 0.6)/4
      {3, 2, 0.76, 0.10},        // (5 - 1.2)/5
      {3, 3, 0.80, 0.10},        // (6 - 1.2)/6: an edge is two stitches at most
      {4, 3, 5.8 / 7.0, 0.10},   // (7 - 1.2)/7
      {12, 12, 0.95, 0.10},      // (24 - 1.2)/24
      {12, 1, 12.4 / 13, 0.10},  // (13 - 0.6)/13
  };
  for (const Rest& rib : ribs) {
    SCOPED_TRACE("k" + std::to_string(rib.knit) + " p" + std::to_string(rib.purl));
    for (const int shift : {0, 2, 4, 40}) {
      const Contraction contraction = rib_contraction(Rib{rib.knit, rib.purl, shift, Lean::left});
      EXPECT_NEAR(contraction.factor, rib.factor, 1e-12);
      EXPECT_NEAR(contraction.error, rib.error, 1e-12);
    }
  }
}

TEST(Fabric, MossStitchDoesNotPullInAtAll) {
  const Contraction moss = rib_contraction(Rib{1, 1, 1, Lean::left});
  EXPECT_EQ(moss.factor, 1.0);
  EXPECT_EQ(moss.error, 0.0);
}

TEST(Fabric, ARibMovedEveryRoundPullsInLessThanItsColumnsWould) {
  for (int knit = 1; knit <= 12; ++knit) {
    for (int purl = 1; purl <= 12; ++purl) {
      if (knit == 1 && purl == 1) continue;
      const double moved = rib_contraction(Rib{knit, purl, 1, Lean::left}).factor;
      const double columns = rib_contraction(Rib{knit, purl, 2, Lean::left}).factor;
      EXPECT_GT(moved, columns) << "k" << knit << " p" << purl;
      EXPECT_LE(moved, 1.0) << "k" << knit << " p" << purl;
    }
  }
  // k2 p2 in columns 0.70, so half the pull of that: 0.85.
  EXPECT_NEAR(rib_contraction(Rib{2, 2, 1, Lean::left}).factor, 0.85, 1e-12);
  EXPECT_NEAR(rib_contraction(Rib{2, 2, 1, Lean::left}).error, 0.10, 1e-12);
}

TEST(Fabric, TexIsGramsAKilometre) {
  EXPECT_DOUBLE_EQ(tex_of(Mass::from_g(100), Length::from_m(200)), 500);
  EXPECT_DOUBLE_EQ(tex_of(Mass::from_g(100), Length::from_m(420)), 100000.0 / 420.0);
}

TEST(Fabric, TightnessIsTheRootOfTexOverTheLoopInCentimetres) {
  // sqrt(500)/1.995384 = 22.36068/1.995384 = 11.2062
  EXPECT_NEAR(tightness(500, mm(19.95384)), 11.2062, 5e-5);
  EXPECT_DOUBLE_EQ(tightness(400, mm(20)), 10);
}

struct Firm {
  double tightness = 0;
  Firmness firmness = Firmness::usual;
};

TEST(Fabric, IsLooseUnderTenAndFirmOverThirteenAndAHalf) {
  const std::vector<Firm> table = {
      {0.1, Firmness::loose},  {std::nextafter(10.0, 0.0), Firmness::loose},
      {10.0, Firmness::usual}, {11.7, Firmness::usual},
      {13.5, Firmness::usual}, {std::nextafter(13.5, 20.0), Firmness::firm},
      {40.0, Firmness::firm},
  };
  for (const Firm& row : table) {
    EXPECT_EQ(firmness_of(row.tightness), row.firmness) << row.tightness;
  }
}

TEST(Fabric, ArealMassIsLoopsTimesYarnTimesTex) {
  // 100 loops a cm2 of 5 mm and 20 tex: 10^6 loops a m2 = 5000 m = 5 km of 20 g.
  EXPECT_DOUBLE_EQ(areal_mass_g_per_m2(100, mm(5), 20), 100);
}

}  // namespace
}  // namespace twinround

// Loop geometry, against published figures.
#include <gtest/gtest.h>

#include <vector>

#include "fabric.h"
#include "units.h"

namespace twinround {
namespace {

TEST(LoopGeometry, AgreesWithTheGateExampleOf2015) {
  // GATE 2015, Textile Engineering, Q54: loops of 0.5 cm, k_c 5.5, k_w 4.2. Courses 5.5/0.5 = 11,
  // wales 4.2/0.5 = 8.4, so 92.4 loops a cm2 (the printed answer is 92).
  const Length loop = Length::from_cm(0.5);
  const double per_cm2 = 100 * stitch_density_per_mm2(loop, 5.5 * 4.2);
  EXPECT_NEAR(per_cm2, 92.4, 1e-9);
  // And back: the gauge of that fabric gives its loop.
  EXPECT_NEAR(loop_length(StitchGauge::per(8.4, Length::from_cm(1)),
                          RoundGauge::per(11, Length::from_cm(1)), 5.5 * 4.2)
                  .mm(),
              5, 1e-12);
}

TEST(LoopGeometry, UsesMundensConstants) {
  // Munden 1959, J. Textile Inst. 50, T448, from memory. Dry-relaxed: k_c 5.0, k_w 3.8, k_s 19.0.
  EXPECT_NEAR(kStitchDensityUnwashed, 5.0 * 3.8, 1e-12);
  // Wet-relaxed: k_c 5.3, k_w 4.1, and k_s 21.6 as he gives it, to the rounding of the two: between
  // 5.25 x 4.05 = 21.3 and 5.35 x 4.15 = 22.2.
  EXPECT_EQ(kStitchDensityWashed, 21.6);
  EXPECT_GT(kStitchDensityWashed, 5.25 * 4.05);
  EXPECT_LT(kStitchDensityWashed, 5.35 * 4.15);
}

TEST(LoopGeometry, AStitchOfSockYarnTakesTwelveToFifteenMillimetres) {
  // Derived from the constants above: 28 stitches over 10 cm of 240 tex yarn, 12.5 to 15 mm of yarn
  // a stitch, whatever the wash and the usual rounds (1.25 to 1.45 for each stitch).
  const StitchGauge stitches = StitchGauge::per(28, Length::from_cm(10));
  for (const double ks : {kStitchDensityUnwashed, kStitchDensityWashed}) {
    for (const double rounds_per_stitch : {1.25, 5.3 / 4.1, 1.40, 1.45}) {
      const RoundGauge rounds = RoundGauge::per_mm(rounds_per_stitch * stitches.per_mm());
      const Length loop = loop_length(stitches, rounds, ks);
      EXPECT_GE(loop.mm(), 12.5) << ks << ", " << rounds_per_stitch;
      EXPECT_LE(loop.mm(), 15.0) << ks << ", " << rounds_per_stitch;
      // As hand-knit socks go: neither loose nor over-firm. sqrt(240)/1.403 = 11.04 at 1.4.
      EXPECT_EQ(firmness_of(tightness(240, loop)), Firmness::usual) << loop.mm();
    }
  }
}

TEST(LoopGeometry, AFlatLoopSpansTwiceItsRestWidth) {
  // Derived: at most half its yarn, and l x w = k_w = 4.1 at rest, so 4.1/2 = 2.05 times the rest
  // width. With k_s alone known, at the wet-relaxed shape (5.3 rounds to 4.1 stitches).
  const StitchGauge stitches = StitchGauge::per_mm(0.2);
  const RoundGauge rounds = RoundGauge::per_mm(0.2 * 5.3 / 4.1);
  const Length widest = widest_stitch(loop_length(stitches, rounds, kStitchDensityWashed));
  EXPECT_NEAR(widest.mm() * stitches.per_mm(), 2.05, 0.01);
}

struct Davis {
  const char* example = "";
  double courses_per_in = 0;
  double width_in = 0;
  double length_yd = 0;
  double take_up = 0;
  double count = 0;  // hanks of 560 yd a pound
  double pounds = 0;
};

TEST(LoopGeometry, WeighsClothAsDavisDid) {
  // W. Davis, Hosiery Manufacture, 1920 (Project Gutenberg 51850):
  //   lb = courses/in x width (in) x length (yd) x take-up / (count x yards a hank).
  // Where it comes from: a cloth L yd long has c x 36 L courses, and each takes t x W in of yarn
  // (the take-up t is yarn over width), so c x 36 L x t W/36 = c W L t yards; a pound has count x
  // 560. Ours is loops a cm2 x l x tex/100 in g/m2. With w stitches a unit of width, the yarn of
  // one course over that width is w x l, so t = w l: take any w, l = t/w, and loops a unit area c x
  // w. Example 11: 18 x 32 x 10 x 2/(10 x 560) = 2.057; example 14: 28 x 48 x 200 x 1.75/(20 x 560)
  // = 42.
  const std::vector<Davis> examples = {{"11", 18, 32, 10, 2, 10, 2.06},
                                       {"14", 28, 48, 200, 1.75, 20, 42}};
  for (const Davis& davis : examples) {
    for (const double wales_per_in : {8.0, 12.0, 20.0}) {  // any: it falls out
      SCOPED_TRACE(davis.example);
      const Length loop = Length::from_in(davis.take_up / wales_per_in);
      const double ks = davis.courses_per_in * wales_per_in * loop.in() * loop.in();
      const double loops_per_cm2 = 100 * stitch_density_per_mm2(loop, ks);
      const double tex = tex_of(Mass::from_lb(1), Length::from_yd(davis.count * 560));
      const double area_m2 =
          Length::from_in(davis.width_in).m() * Length::from_yd(davis.length_yd).m();
      const Mass cloth = Mass::from_g(areal_mass_g_per_m2(loops_per_cm2, loop, tex) * area_m2);
      EXPECT_NEAR(cloth.lb(), davis.pounds, 0.005);
      EXPECT_NEAR(cloth.lb(),
                  davis.courses_per_in * davis.width_in * davis.length_yd * davis.take_up /
                      (davis.count * 560),
                  1e-9);
    }
  }
}

}  // namespace
}  // namespace twinround

// The yarn in a stitch, how far it stretches, how much a rib pulls in, how firm the fabric is.
#pragma once

#include "rib.h"
#include "units.h"

namespace twinround {

// Munden's constant of stitch density, ks = stitches per area x loop length squared (Munden 1959,
// J. Textile Inst. 50, T448, from memory).
inline constexpr double kStitchDensityWashed = 21.6;    // wet-relaxed
inline constexpr double kStitchDensityUnwashed = 19.0;  // dry-relaxed, as it comes off the needles

// Stitches per square millimetre at a loop length, ks/l^2; its inverse below.
double stitch_density_per_mm2(Length loop, double ks);

// Loop length: the yarn in one stitch, l = sqrt(ks/(g_s g_r)). Give or take 10 % (ASSUMPTION).
Length loop_length(StitchGauge stitches, RoundGauge rounds, double ks);

// Loop length of a weighed swatch: its grams a stitch times the metres a gram of the ball. Give or
// take 3 % (ASSUMPTION).
Length weighed_loop_length(Mass swatch, double swatch_stitches, Length ball_length, Mass ball_mass);

// The widest one stitch spans: half its yarn, both legs pulled flat sideways (geometry).
Length widest_stitch(Length loop);

// Width of relaxed rib over stockinette of the same stitches, and the relative error of that.
// 1x1 gives 0.70 (Spencer, Knitting Technology, from memory); wider ribs pull in less, ASSUMPTION,
// give or take 10 %. Moss stitch gives 1. Other ribs moved every round pull in half of that,
// ASSUMPTION: they are no longer columns.
struct Contraction {
  double factor = 1;
  double error = 0;
};
Contraction rib_contraction(const Rib& rib);

// Linear density in tex, grams a kilometre (ISO 1144).
double tex_of(Mass mass, Length length);

// Tightness factor sqrt(tex)/l with l in cm, and its words: under 10 loose, it will wear through;
// to 13.5 usual for hand-knit socks; over it firm. ASSUMPTION.
double tightness(double tex, Length loop);
enum class Firmness { loose, usual, firm };
Firmness firmness_of(double tightness_factor);

// Mass of fabric in g/m^2 (Texcoms Handbook 2023, p. 147): loops per cm^2 x l(mm) x tex / 100.
double areal_mass_g_per_m2(double stitches_per_cm2, Length loop, double tex);

}  // namespace twinround

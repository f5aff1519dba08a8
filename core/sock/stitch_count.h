// How many stitches go round: the count nearest to the ease asked for that the rib allows and the
// heel passes.
#pragma once

#include <vector>

#include "result.h"
#include "rib.h"
#include "units.h"

namespace twinround {

// The counts that can be knit at all.
inline constexpr int kLeastCount = 8;
inline constexpr int kMostCount = 400;

struct CountInput {
  Length ball_girth;
  Length heel_girth;  // measured, or the 95th percentile for the ball girth
  StitchGauge gauge;
  Length widest_stitch;
  int repeat = 4;
  double girth_ease = -0.10;
};

// The smallest even multiple of the repeat: every count is a multiple of it.
int count_step(int repeat);
bool is_count(int n, int repeat);
// Both halves of a round read alike when each holds whole repeats.
bool halves_alike(Stitches n, int repeat);

// Stitches asked for before rounding: ball girth x (1 + ease) x gauge.
double ideal_stitches(const CountInput& input);

struct CountAdvice {
  Stitches count;
  Stitches by_ease;  // before the heel had its say; equal to count unless the heel guard moved it
  double heel_use_by_ease = 0;
};

// Prefers a count whose halves read alike while its own ease stays within 0.04 of the one asked
// for; else the nearest; a tie goes to the smaller. Then up, count by count, until the heel uses at
// most 0.85 of the stretch. Refused (count_out_of_range at /foot/ballGirthMm) where no count from 8
// to 400 is nearest or comes within 0.04 of the ease asked for; heel_out_of_reach at
// /foot/heelAnkleGirthMm where none up to 400 passes the heel.
Result<CountAdvice> advise_count(const CountInput& input);

// Whether a count's own ease lies within 0.04 of the one asked for and the heel passes it.
bool count_is_good(Stitches n, const CountInput& input);

// A count the knitter names is obeyed, and refused (not_a_count at /stitchCount, with the two
// nearest) only if it is no count.
Result<Stitches> accept_count(int named, int repeat);

// Up to five counts around n, n among them, n in the middle where both sides have two.
std::vector<Stitches> counts_around(Stitches n, int repeat);

struct RibThatFits {
  int knit = 0;
  int purl = 0;
  Stitches count;
  double ease = 0;
};

// The ribs from k1 p1 to k4 p4 whose own count stays within 0.04 of the ease asked for and 0.85 of
// the stretch at the heel, nearest ease first. Shift and lean do not matter here.
std::vector<RibThatFits> ribs_that_fit(const CountInput& input);

}  // namespace twinround

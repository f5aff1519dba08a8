// The rib, round by round, and the second sock's mirror of it.
#pragma once

#include "line.h"
#include "rib.h"
#include "units.h"

namespace twinround {

// One round of the first sock, `offset` stitches moved. Leaning left: stitch i is knit if ((i -
// offset) mod repeat) < k; right: ((i + offset) mod repeat) < k. A mirrored pair's first sock leans
// left.
RoundLine rib_round(const Rib& rib, Stitches n, int offset);

// Where the first stitch of a round stands within the repeat (0: first knit stitch), `offset`
// stitches moved.
int first_place(const Rib& rib, int offset);

// A round of rib whose first stitch stands at `place` of the repeat: stitch i is knit if ((i +
// place) mod repeat) < knit.
RoundLine rib_line(int knit, int purl, Stitches n, int place);

// How far the rib has moved in spiral round r (from 0): floor(r / rounds_per_shift), 0 for a
// straight rib.
int offset_in_round(const Rib& rib, int r);

// The second sock of a mirrored pair: each half of the first sock's round read backwards.
RoundLine mirror_round(const RoundLine& line);

// Rounds until the rib stands where it began: repeat x rounds_per_shift; 1 for a straight rib.
Rounds period(const Rib& rib);

// How far a rib leans from upright: atan((1/g_s)/(rounds_per_shift/g_r)); 0 for a rib that does not
// lean.
Angle pitch(const Rib& rib, StitchGauge stitches, RoundGauge rounds);

}  // namespace twinround

// The shoe sizes that go on a size's band.
#pragma once

#include <vector>

#include "shoe.h"
#include "size_rule.h"

namespace twinround {

// Whole sizes of one scale, both ends meant.
struct ShoeBand {
  ShoeScale scale = ShoeScale::eu;
  int from = 0;
  int to = 0;
};

// The whole sizes whose foot lies within the lengths; a scale that has none there is left out.
// European sizes for everybody; UK and US ones for grown-ups alone, for children's start again
// at 1. A shoe size is a poor stand-in for a measured foot.
std::vector<ShoeBand> shoe_bands(const LengthBand& lengths, bool women, bool men);

}  // namespace twinround

// When a sock made for nobody in particular serves a foot.
#pragma once

#include "units.h"

namespace twinround {

// Floor to top edge: the same for all, or so much a foot length.
struct LegRule {
  Length height;
  double of_foot = 0;

  Length of(Length foot) const { return height + of_foot * foot; }
};

// What all sizes of a drive have in common.
struct SockMake {
  StitchGauge gauge;
  Length widest_stitch;  // one stitch pulled as far as it goes
  double length_ease = -0.04;
  LegRule leg;
};

// A size: its stitches, and the foot that its length is made for.
struct SockSize {
  Stitches stitches;
  Length foot;
};

// The ball girth over the tube's own girth laid flat, both ends allowed. ASSUMPTION.
inline constexpr double kLeastStretch = 1.00;
inline constexpr double kMostStretch = 1.40;
// The length that a foot and its leg ask for over the sock's own, both ends allowed. ASSUMPTION.
inline constexpr double kLeastLength = 0.95;
inline constexpr double kMostLength = 1.20;

// From toe to edge, as a plan for that foot makes it.
Length sock_length(const SockMake& make, Length foot);

// The tube laid flat, and the largest heel-ankle girth it passes: at 0.85 of its widest.
Length tube_girth(const SockMake& make, Stitches n);
Length heel_passed(const SockMake& make, Stitches n);

// Feet whose length the sock serves, whatever their girth.
struct LengthBand {
  Length from;
  Length to;
};
LengthBand lengths_served(const SockMake& make, Length foot);

// A foot measured in full.
struct WholeFoot {
  Length length, ball, heel;
};
bool serves(const SockMake& make, const SockSize& size, const WholeFoot& foot);

}  // namespace twinround

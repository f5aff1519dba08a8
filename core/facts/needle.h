// Needle sizes by their names, and the circular lengths sold.
#pragma once

#include <array>
#include <optional>

#include "units.h"

namespace twinround {

// Metric is the key; the other names are empty where the chart has none.
struct NeedleName {
  Length diameter;
  const char* us = "";
  const char* uk = "";
};

// Every size the charts name, thinnest first.
const std::array<NeedleName, 18>& named_needles();

// The names of a needle, matched within 0.01 mm; no names for a size the charts leave out. The
// diameter is the one asked for, never the chart's.
NeedleName name_needle(Length diameter);

// The thinnest needle the charts name that is at least this thick; past the thickest, the diameter
// itself without names.
NeedleName next_named_needle(Length at_least);

// The next needle the charts name thinner, and thicker, than this one; nothing past the ends.
std::optional<NeedleName> thinner_needle(Length diameter);
std::optional<NeedleName> thicker_needle(Length diameter);

// A circular needle as it is sold, tip to tip: one article, by its round metric length (1000 mm)
// and by its round length in inches (40), which are up to 24 mm apart.
struct CircularLength {
  Length length;
  int inches = 0;
};
const std::array<CircularLength, 6>& circular_lengths();

// The shortest circular needle sold that is at least as long as wanted, by its metric length;
// nothing past the longest, 1500 mm.
std::optional<Length> next_cable_sold(Length wanted);

// Least circular for two socks by magic loop: 40 in, sold as 1000 mm (common practice, no source).
inline constexpr Length kLeastCableForTwo = Length::from_mm(1000);

}  // namespace twinround

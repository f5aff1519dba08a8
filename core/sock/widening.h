// One stitch more in every repeat: how a rib grows wider for a wider leg without losing its
// columns.
#pragma once

#include <optional>

#include "line.h"
#include "units.h"

namespace twinround {

// A rib of whole repeats round the sock.
struct WideRib {
  int knit = 0;
  int purl = 0;
  Stitches stitches;
};

// The next wider one: the narrower column grows, of two alike the purl (k2p2 -> k2p3 -> k3p3);
// where the repeats are odd in number and that would leave an odd count, both grow at once. Nothing
// past 12 stitches a column or 400 round.
std::optional<WideRib> next_wider(const WideRib& rib);

// Whether a column of knit (of purl) grows from one to the other.
bool knit_grows(const WideRib& from, const WideRib& to);
bool purl_grows(const WideRib& from, const WideRib& to);

// The round that widens: worked in the old rib, its first stitch at `place` of the repeat, with a
// stitch made at the end of every column that grows. The columns go on unbroken.
RoundLine widening_round(const WideRib& from, const WideRib& to, int place);

// Where the first stitch stands within the wider repeat after that round.
int place_after(const WideRib& from, const WideRib& to, int place);

}  // namespace twinround

// Stripes of the knitter's own, from plain colours: so many rounds of each, over and over.
#pragma once

#include <vector>

#include "yarn_course.h"

namespace twinround {

struct RoundStripe {
  int colour = 0;
  int rounds = 1;  // at least 1
};

struct ColourNeed {
  int colour = 0;
  int bands = 0;  // on one sock
  Length pair;
  Mass pair_mass;
};

struct OwnStripes {
  std::vector<Band> bands;          // of either sock; their yarn adds up to a sock's
  std::vector<ColourNeed> colours;  // in the order in which they come
  int changes = 0;                  // of colour, on one sock
  // More, for the pair, if the yarn is cut at every change in place of being carried up inside: two
  // tails a change.
  Length more_if_cut;
};

// From the first round of the toe to the last, the cast-on with the first stripe, the bind-off with
// the last. Precondition: at least one stripe.
OwnStripes own_stripes(const YarnCourse& course, const std::vector<RoundStripe>& stripes,
                       double tex);

}  // namespace twinround

#include "fit.h"

#include <algorithm>

#include "rounding.h"
#include "tube.h"

namespace twinround {

namespace {

Length ankle_height(const Leg& leg) {
  return kAnkleHeight * leg.foot_length;
}
Length calf_height(const Leg& leg) {
  return kCalfHeight * leg.foot_length;
}

// Where on the way from ankle to calf the girth reaches `girth`. Precondition: it does.
Length height_of_girth(const Leg& leg, Length girth) {
  const double way = (girth - leg.ankle_girth) / (leg.calf_girth - leg.ankle_girth);
  return ankle_height(leg) + way * (calf_height(leg) - ankle_height(leg));
}

}  // namespace

Length girth_at(const Leg& leg, Length height) {
  const double way = (height - ankle_height(leg)) / (calf_height(leg) - ankle_height(leg));
  return leg.ankle_girth + std::clamp(way, 0.0, 1.0) * (leg.calf_girth - leg.ankle_girth);
}

LegFit fit_leg(const Leg& leg, Length edge_height, Stitches n, Length widest_stitch) {
  // The girth runs straight between two level stretches, so the widest place is at one of their
  // ends.
  const Length edge_girth = girth_at(leg, edge_height);
  const bool widest_below = leg.ankle_girth > edge_girth;
  LegFit fit;
  fit.edge_girth = edge_girth;
  fit.widest_girth = widest_below ? leg.ankle_girth : edge_girth;
  fit.widest_height = widest_below ? std::min(edge_height, ankle_height(leg)) : edge_height;
  fit.worst_use = girth_use(fit.widest_girth, n, widest_stitch);
  if (at_least(kPassUse, fit.worst_use)) return fit;

  const Length passing = n.value() * widest_stitch * kPassUse;
  // Too tight at the ankle already: then from the floor up (the level stretch), whatever comes
  // above.
  fit.fails_from = leg.ankle_girth > passing ? Length::from_mm(0) : height_of_girth(leg, passing);
  return fit;
}

}  // namespace twinround

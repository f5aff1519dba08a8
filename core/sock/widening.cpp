#include "widening.h"

namespace twinround {

namespace {

constexpr int kWidestColumn = 12;  // as the request's own limit for a rib
constexpr int kMostStitches = 400;

// The narrower column grows; where one stitch in each of an odd number of repeats would leave an
// odd count, both do.
WideRib grown(const WideRib& rib) {
  const int repeats = rib.stitches.value() / (rib.knit + rib.purl);
  const bool both = (rib.stitches.value() + repeats) % 2 != 0;
  WideRib wider = rib;
  if (both || rib.purl <= rib.knit) ++wider.purl;
  if (both || rib.purl > rib.knit) ++wider.knit;
  wider.stitches = Stitches(repeats * (wider.knit + wider.purl));
  return wider;
}

HalfLine widened_half(const WideRib& from, const WideRib& to, int first, int stitches) {
  const int repeat = from.knit + from.purl;
  HalfLine half;
  for (int i = first; i < first + stitches; ++i) {
    const int place = i % repeat;
    append_run(half, place < from.knit ? Work::knit : Work::purl, 1);
    if (place == from.knit - 1 && knit_grows(from, to)) append_run(half, Work::make_one_left, 1);
    if (place == repeat - 1 && purl_grows(from, to)) append_run(half, Work::make_one_purl, 1);
  }
  return half;
}

}  // namespace

std::optional<WideRib> next_wider(const WideRib& rib) {
  const WideRib wider = grown(rib);
  const bool can_be_knit = wider.knit <= kWidestColumn && wider.purl <= kWidestColumn &&
                           wider.stitches.value() <= kMostStitches;
  if (!can_be_knit) return {};
  return wider;
}

bool knit_grows(const WideRib& from, const WideRib& to) {
  return to.knit > from.knit;
}
bool purl_grows(const WideRib& from, const WideRib& to) {
  return to.purl > from.purl;
}

RoundLine widening_round(const WideRib& from, const WideRib& to, int place) {
  const int half = from.stitches.value() / 2;
  return {widened_half(from, to, place, half), widened_half(from, to, place + half, half)};
}

int place_after(const WideRib& from, const WideRib& to, int place) {
  // A stitch made at the end of the knit column comes before the purls; one at the end of the purls
  // ends the repeat.
  return place >= from.knit && knit_grows(from, to) ? place + 1 : place;
}

}  // namespace twinround

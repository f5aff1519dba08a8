#include "own_stripes.h"

#include <algorithm>
#include <cstddef>

namespace twinround {
namespace {

// The stripes over the whole sock; neighbours of one colour are one.
std::vector<Band> lay(const YarnCourse& course, const std::vector<RoundStripe>& stripes) {
  const int all = static_cast<int>(course.rounds.size());
  std::vector<Band> bands;
  int done = 0;
  for (std::size_t at = 0; done < all; at = (at + 1) % stripes.size()) {
    const int to = std::min(all, done + stripes[at].rounds);
    const bool goes_on = !bands.empty() && bands.back().colour == stripes[at].colour;
    if (!goes_on) bands.push_back({stripes[at].colour, {}, {done + 1, 0}, {}});
    bands.back().to = {to, 1};
    done = to;
  }
  return bands;
}

}  // namespace

OwnStripes own_stripes(const YarnCourse& course, const std::vector<RoundStripe>& stripes,
                       double tex) {
  OwnStripes own;
  own.bands = lay(course, stripes);
  for (Band& band : own.bands) {
    const Length before = band.from.round == 1
                              ? Length{}
                              : course.used[static_cast<std::size_t>(band.from.round - 1)];
    const bool is_last = &band == &own.bands.back();
    const Length after =
        is_last ? course.whole : course.used[static_cast<std::size_t>(band.to.round)];
    band.yarn = after - before;
    auto colour = std::find_if(own.colours.begin(), own.colours.end(),
                               [&](const ColourNeed& need) { return need.colour == band.colour; });
    if (colour == own.colours.end()) {
      own.colours.push_back({band.colour, 0, {}, {}});
      colour = own.colours.end() - 1;
    }
    colour->bands += 1;
    colour->pair = colour->pair + 2 * band.yarn;
    colour->pair_mass = Mass::from_g(colour->pair.m() * tex / 1000);
  }
  own.changes = static_cast<int>(own.bands.size()) - 1;
  own.more_if_cut = course.tail * (4 * own.changes);
  return own;
}

}  // namespace twinround

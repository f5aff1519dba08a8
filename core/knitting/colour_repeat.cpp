#include "colour_repeat.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "rounding.h"

namespace twinround {
namespace {

bool is_same(const Stripe& a, const Stripe& b) {
  return a.colour == b.colour && std::abs(a.yarn.mm() - b.yarn.mm()) < kTie * 1000;
}

// Whether every stripe is the one `step` further on, round and round.
bool repeats_every(const std::vector<Stripe>& stripes, std::size_t step) {
  for (std::size_t i = 0; i < stripes.size(); ++i) {
    if (!is_same(stripes[i], stripes[(i + step) % stripes.size()])) return false;
  }
  return true;
}

Length sum_of(const std::vector<Stripe>& stripes) {
  Length sum;
  for (const Stripe& stripe : stripes) sum = sum + stripe.yarn;
  return sum;
}

}  // namespace

ColourRepeat shortest_repeat(const std::vector<Stripe>& told) {
  ColourRepeat repeat;
  std::vector<Stripe>& stripes = repeat.stripes;
  for (const Stripe& stripe : told) {
    if (!stripes.empty() && stripes.back().colour == stripe.colour) {
      stripes.back().yarn = stripes.back().yarn + stripe.yarn;
    } else {
      stripes.push_back(stripe);
    }
  }
  if (stripes.size() > 1 && stripes.back().colour == stripes.front().colour) {
    repeat.shift = stripes.front().yarn;
    stripes.back().yarn = stripes.back().yarn + stripes.front().yarn;
    stripes.erase(stripes.begin());
  }
  std::size_t step = 1;
  while (step < stripes.size() && (stripes.size() % step != 0 || !repeats_every(stripes, step))) {
    ++step;
  }
  stripes.resize(step);
  repeat.length = sum_of(stripes);
  return repeat;
}

Length wrapped(const ColourRepeat& repeat, Length at) {
  const double length = repeat.length.mm();
  double into = std::fmod(at.mm(), length);
  if (into < 0) into += length;
  return Length::from_mm(at_least(into, length) || !clearly_above(into, 0) ? 0 : into);
}

std::vector<Length> mirrors_of(const ColourRepeat& repeat) {
  const std::vector<Stripe>& stripes = repeat.stripes;
  const std::size_t all = stripes.size();
  std::vector<Length> found;
  if (all == 1) return {Length{}};
  Length end = repeat.shift;  // of stripe `to`
  for (std::size_t to = 0; to < all; ++to) {
    end = end + stripes[to].yarn;
    // The mirror that puts the first stripe upon stripe `to`.
    bool is_mirror = true;
    for (std::size_t i = 0; i < all; ++i) {
      is_mirror = is_mirror && is_same(stripes[i], stripes[(to + all - i) % all]);
    }
    if (is_mirror) found.push_back(wrapped(repeat, repeat.shift + end));
  }
  return found;
}

std::vector<Stripe> unwound(const ColourRepeat& repeat, Length from, bool backwards, Length yarn) {
  std::vector<Stripe> pieces;
  const std::vector<Stripe>& stripes = repeat.stripes;
  const std::size_t all = stripes.size();
  if (all == 1) return {{stripes[0].colour, yarn}};
  Length into = wrapped(repeat, from - repeat.shift);
  std::size_t at = 0;
  while (at + 1 < all && at_least(into.mm(), stripes[at].yarn.mm())) {
    into = into - stripes[at].yarn;
    ++at;
  }
  // What is left of the stripe where the yarn begins.
  Length left = backwards ? into : stripes[at].yarn - into;
  Length to_go = yarn;
  while (clearly_above(to_go.mm(), 0)) {
    const Length piece = std::min(left, to_go);
    if (clearly_above(piece.mm(), 0)) pieces.push_back({stripes[at].colour, piece});
    to_go = to_go - piece;
    at = (at + (backwards ? all - 1 : 1)) % all;
    left = stripes[at].yarn;
  }
  return pieces;
}

}  // namespace twinround

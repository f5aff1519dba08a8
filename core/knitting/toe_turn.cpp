#include "toe_turn.h"

#include <algorithm>
#include <cstddef>

namespace twinround {
namespace {

using Sides = std::vector<ToeSides>;

constexpr int kStitchesPerSide = 2;

bool widens_great(ToeSides sides) {
  return sides == ToeSides::both || sides == ToeSides::great;
}

bool widens_little(ToeSides sides) {
  return sides == ToeSides::both || sides == ToeSides::little;
}

int stitches_of(ToeSides sides) {
  return kStitchesPerSide * (int{widens_great(sides)} + int{widens_little(sides)});
}

// The last round that is knit and has no more than `count` stitches.
std::optional<int> round_to_turn_at(const Toe& toe, int rounds_done, Stitches count) {
  if (toe.cast_on > count) return {};
  int round = std::min(rounds_done, static_cast<int>(toe.counts.size()));
  while (round > 0 && toe.counts[static_cast<std::size_t>(round - 1)] > count.value()) --round;
  return round;
}

// Takes one increase off one side, in the last round ahead that has one there.
bool leave_out_last(Sides& sides, int from, bool great) {
  for (std::size_t i = sides.size(); i > static_cast<std::size_t>(from); --i) {
    ToeSides& round = sides[i - 1];
    if (great ? !widens_great(round) : !widens_little(round)) continue;
    const ToeSides other = great ? ToeSides::little : ToeSides::great;
    round = round == ToeSides::both ? other : ToeSides::none;
    return true;
  }
  return false;
}

void leave_out(Sides& sides, int from, int pairs) {
  for (; pairs > 0; --pairs) {
    const auto great = std::count_if(sides.begin(), sides.end(), widens_great);
    const auto little = std::count_if(sides.begin(), sides.end(), widens_little);
    const bool great_first = great > little;
    if (!leave_out_last(sides, from, great_first)) leave_out_last(sides, from, !great_first);
  }
}

// Whether a round, from 0, is plain and stands between plain ones. The first sets the wraps up.
bool is_free(const Sides& sides, std::size_t round) {
  const auto is_plain = [&](std::size_t at) { return sides[at] == ToeSides::none; };
  return round > 0 && is_plain(round - 1) && is_plain(round) &&
         (round + 1 == sides.size() || is_plain(round + 1));
}

void add(Sides& sides, int from, int pairs) {
  const auto take = [&pairs] {
    const bool is_last_pair = pairs == 1;
    pairs -= is_last_pair ? 1 : 2;
    return is_last_pair ? ToeSides::great : ToeSides::both;
  };
  for (std::size_t i = sides.size(); i > static_cast<std::size_t>(from) && pairs > 0; --i) {
    if (is_free(sides, i - 1)) sides[i - 1] = take();
  }
  while (pairs > 0) {
    if (sides.back() != ToeSides::none) sides.push_back(ToeSides::none);
    sides.push_back(take());
  }
}

Toe toe_of(Stitches cast_on, const Sides& sides) {
  Toe toe;
  toe.cast_on = cast_on;
  toe.wraps = cast_on.value() / 2;
  toe.sides = sides;
  int count = cast_on.value();
  for (const ToeSides round : sides) {
    count += stitches_of(round);
    toe.increase_rounds += round == ToeSides::none ? 0 : 1;
    toe.counts.push_back(count);
  }
  return toe;
}

}  // namespace

std::optional<TurnedToe> turn_toe(const Toe& begun, int rounds_done, Stitches count) {
  const std::optional<int> from = round_to_turn_at(begun, rounds_done, count);
  if (!from) return {};
  TurnedToe turned;
  turned.from = *from;
  Sides sides = begun.sides;
  const int missing = count.value() - begun.counts.back();
  if (missing < 0) leave_out(sides, *from, -missing / kStitchesPerSide);
  if (missing > 0) add(sides, *from, missing / kStitchesPerSide);
  turned.toe = toe_of(begun.cast_on, sides);
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const bool added = i >= begun.sides.size();
    const ToeSides was = added ? ToeSides::none : begun.sides[i];
    if (sides[i] == was) continue;
    turned.steps.push_back(
        {static_cast<int>(i) + 1, was, sides[i], added, Stitches(turned.toe.counts[i])});
  }
  return turned;
}

}  // namespace twinround

// The colours of a self-striping yarn, one after the other and over again.
#pragma once

#include <optional>
#include <vector>

#include "units.h"

namespace twinround {

struct Stripe {
  int colour = 0;
  Length yarn;  // above 0
};

// Stripes in the order in which they leave the ball, as short as they can be told: no two
// neighbours of one colour (the last and the first among them), and no part that itself repeats.
struct ColourRepeat {
  std::vector<Stripe> stripes;
  Length length;
  Length shift;  // of the list as it was told, yarn before what is now the first stripe
};

// Precondition: at least one stripe.
ColourRepeat shortest_repeat(const std::vector<Stripe>& told);

// How far into the repeat a metre lies: 0 to below its length, whatever was put in. A nanometre
// short of the end is the beginning.
Length wrapped(const ColourRepeat& repeat, Length at);

// Where the repeat reads alike forwards and backwards: twice the places it mirrors about, each from
// 0 to below its length. None where it does not; of one colour alone, 0.
std::vector<Length> mirrors_of(const ColourRepeat& repeat);

// What comes off the ball from there: `backwards` from its other end. The pieces make `yarn`
// together. `from` is where in the told list the first metre lies.
std::vector<Stripe> unwound(const ColourRepeat& repeat, Length from, bool backwards, Length yarn);

}  // namespace twinround

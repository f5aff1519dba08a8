// Stripes that a self-striping yarn makes on the pair, and how both socks come to the same ones.
#pragma once

#include <optional>
#include <vector>

#include "colour_repeat.h"
#include "result.h"
#include "units.h"
#include "yarn_course.h"

namespace twinround {

enum class YarnFrom {
  two_balls,  // one for each sock
  two_ends,   // of one ball: A from the end that lies at `start_a`, B from the other
  halves,     // of one ball, cut: A from its end, B from the cut
};

struct StripesInput {
  std::vector<Stripe> repeat;  // in the order in which it leaves the ball; 1 or more
  YarnFrom from = YarnFrom::two_balls;
  Length start_a, start_b;     // where in the repeat each ball begins; B's of two balls only
  std::optional<Length> ball;  // yarn in one; needed where both socks are from one
  double tex = 0;              // grams a kilometre
  double margin = 0.10;        // kept over a sock's yarn before it is called enough
};

enum class Enough { yes, just, no };  // just: without the margin

// What one sock's yarn comes to, once the socks are alike (as they are, where they cannot be).
struct BallUse {
  Length holds;   // the ball, or the part of it for this sock
  Length pulled;  // off before the cast-on
  Length spare;   // left over; below 0: so much is missing
  Enough enough = Enough::no;
};

struct PullOff {
  Length yarn;
  Mass mass;
};

struct StripePlan {
  Length repeat;           // the shortest one
  std::vector<Band> a, b;  // as the balls begin now; their yarn adds up to a sock's
  bool alike = false;      // as they begin now
  bool opposite = false;   // A and B run through the colours in opposite order
  bool mirrors = false;    // the repeat reads alike both ways
  // Off one ball, and then the socks are alike: off B's, or else off A's. Absent where nothing does
  // it; of both ends of one ball B's alone is told, the least that does.
  std::optional<PullOff> off_b, off_a;
  std::optional<BallUse> use_a, use_b;  // where the ball's length is known; with `off_b` pulled off
  std::optional<PullOff> cut;           // of a ball cut in two: the part for A
};

// A ball is cut where its repeat begins as A's does, as near the half as that comes; where it holds
// no whole repeat, at the half.
// Refused: more than kMostBands on a sock, at /repeat/stripes. Precondition: the ball's length
// where both socks are from one.
Result<StripePlan> stripe_plan(const YarnCourse& course, const StripesInput& input);

// No stripes any more; a sock has 2000 rounds at most.
inline constexpr int kMostBands = 2000;

// The pieces that leave a ball, as bands on the sock from its beginning.
std::vector<Band> bands_of(const YarnCourse& course, const std::vector<Stripe>& pieces);

}  // namespace twinround

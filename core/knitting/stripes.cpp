#include "stripes.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "rounding.h"

namespace twinround {
namespace {

constexpr Length kNothing = Length::from_mm(0);

PullOff pull_off(Length yarn, double tex) {
  return {yarn, Mass::from_g(yarn.m() * tex / 1000)};
}

// Where the pieces of one sock's yarn change colour, and to which, is the same as of the other's.
bool are_alike(const std::vector<Stripe>& a, const std::vector<Stripe>& b) {
  return std::equal(
      a.begin(), a.end(), b.begin(), b.end(), [](const Stripe& one, const Stripe& other) {
        return one.colour == other.colour && std::abs((one.yarn - other.yarn).mm()) < 1e-6;
      });
}

// Yarn before the cut of a ball, from A's end of it.
Length cut_of(const ColourRepeat& repeat, Length ball) {
  const Length half = ball / 2;
  const int repeats = std::max(1, nearest_multiple(half / repeat.length, 1, Tie::down));
  const Length cut = repeat.length * repeats;
  return clearly_above(ball.mm(), cut.mm()) ? cut : half;
}

// The least yarn off the other end of one ball so that from there its colours come as from A's end.
std::optional<Length> off_other_end(const ColourRepeat& repeat, Length start, Length ball) {
  if (repeat.stripes.size() == 1) return kNothing;
  std::optional<Length> least;
  for (const Length mirror : mirrors_of(repeat)) {
    const Length off = wrapped(repeat, start + start + ball - mirror);
    if (!least || off < *least) least = off;
  }
  return least;
}

BallUse use_of(Length holds, Length pulled, Length sock, double margin) {
  BallUse use;
  use.holds = holds;
  use.pulled = pulled;
  use.spare = holds - pulled - sock;
  if (at_least(use.spare.mm(), margin * sock.mm())) {
    use.enough = Enough::yes;
  } else if (at_least(use.spare.mm(), 0)) {
    use.enough = Enough::just;
  }
  return use;
}

Problem too_many_bands(double stripes) {
  Problem problem;
  problem.field = "/repeat/stripes";
  problem.code = "too_many_bands";
  problem.numbers = {{"bands", stripes}, {"most", kMostBands}};
  problem.message =
      "These colours are too short to make stripes: they change more than 2000 times.";
  return problem;
}

}  // namespace

std::vector<Band> bands_of(const YarnCourse& course, const std::vector<Stripe>& pieces) {
  std::vector<Band> bands;
  Length worked;
  SockPlace from = place_of_yarn(course, worked);
  for (const Stripe& piece : pieces) {
    worked = worked + piece.yarn;
    const SockPlace to = place_of_yarn(course, worked);
    bands.push_back({piece.colour, piece.yarn, from, to});
    from = to;
  }
  return bands;
}

Result<StripePlan> stripe_plan(const YarnCourse& course, const StripesInput& input) {
  const ColourRepeat repeat = shortest_repeat(input.repeat);
  const double bands =
      (course.whole / repeat.length) * static_cast<double>(repeat.stripes.size()) + 1;
  if (repeat.stripes.size() > 1 && bands > kMostBands) return too_many_bands(bands);

  const Length ball = input.ball.value_or(kNothing);
  const bool is_cut = input.from == YarnFrom::halves;
  const bool is_two_ends = input.from == YarnFrom::two_ends;
  const Length cut = cut_of(repeat, ball);
  const Length start_b = is_cut        ? input.start_a + cut
                         : is_two_ends ? input.start_a + ball
                                       : input.start_b;

  StripePlan plan;
  plan.repeat = repeat.length;
  plan.mirrors = !mirrors_of(repeat).empty();
  const std::vector<Stripe> a = unwound(repeat, input.start_a, false, course.whole);
  const std::vector<Stripe> b = unwound(repeat, start_b, is_two_ends, course.whole);
  plan.a = bands_of(course, a);
  plan.b = bands_of(course, b);
  plan.alike = are_alike(a, b);
  plan.opposite = is_two_ends && repeat.stripes.size() > 1;
  if (is_cut) plan.cut = pull_off(cut, input.tex);

  std::optional<Length> off_b;
  if (plan.alike) {
    off_b = kNothing;
  } else if (is_two_ends) {
    off_b = off_other_end(repeat, input.start_a, ball);
  } else {
    off_b = wrapped(repeat, input.start_a - start_b);
    plan.off_a = pull_off(wrapped(repeat, start_b - input.start_a), input.tex);
  }
  if (off_b) plan.off_b = pull_off(*off_b, input.tex);

  if (input.ball) {
    const Length pulled = off_b.value_or(kNothing);
    // From both ends the socks share the ball: each may have what the other leaves.
    const Length for_a = is_cut ? cut : is_two_ends ? (ball - pulled) / 2 : ball;
    const Length for_b = is_cut || is_two_ends ? ball - for_a : ball;
    plan.use_a = use_of(for_a, kNothing, course.whole, input.margin);
    plan.use_b = use_of(for_b, pulled, course.whole, input.margin);
  }
  return plan;
}

}  // namespace twinround

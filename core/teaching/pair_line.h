// The figures of one pair as they stand in a line of a table: what to buy, to lend and to expect.
#pragma once

#include <optional>

#include "needle.h"
#include "plan.h"
#include "plan_request.h"
#include "result.h"
#include "units.h"

namespace twinround {

// A ball whose label is not at hand. ASSUMPTION: sock yarn is sold in 50 g as well; its metres are
// those that 100 g of the category usually measure (common practice, no source).
inline constexpr Mass kUsualBall = Mass::from_g(100);

// The ball a yarn is bought in: its own, or the usual one of its category; absent where neither is
// known.
struct BallBought {
  Mass mass;
  Length length;
  bool usual = false;
};
std::optional<BallBought> ball_bought(const YarnChoice& yarn);

// All as the plan has them; reals are not rounded.
struct PairLine {
  int category = 0;  // as named, or the one that the gauge falls into
  Stitches stitches;
  Rounds rounds;  // of one sock, toe to edge
  Length pair;    // yarn
  Length with_margin;
  double yarn_error = 0;  // give or take, relative; likewise below
  Mass sock_mass;
  Mass with_margin_mass;  // of the pair
  std::optional<BallBought> ball;
  std::optional<Balls> balls;  // of that; absent where it is
  NeedleName needle;
  std::optional<Length> cable;  // as sold; absent where none is long enough
  Duration time;
  double time_error = 0;
};

// Precondition: the plan is of a request with that yarn.
PairLine line_of(const Plan& plan, const YarnChoice& yarn);

// The line of the very plan that the request makes, or the plan's own problems.
Result<PairLine> plan_line(const PlanRequest& request);

}  // namespace twinround

// A class seat by seat: a line of figures for each, and what to buy and to lend for all of them.
#pragma once

#include <optional>
#include <vector>

#include "odd.h"
#include "pair_line.h"
#include "plan_request.h"
#include "result.h"
#include "units.h"

namespace twinround {

inline constexpr int kMostSeats = 1000;

struct Seat {
  PairLine line;
  std::vector<Oddity> odd;  // what does harm; doubts are left to the seat's own plan
};

// A seat's figures, or its plan's own problems.
Result<Seat> plan_seat(const PlanRequest& request, const InHand& in_hand);

// Yarn for all seats of a category; margins are in it.
struct WoolTotal {
  int category = 0;
  int pairs = 0;
  Length length;
  Mass mass;
  int balls = 0;               // each pair's own, whole
  int pairs_without_ball = 0;  // pairs of which no number of balls can be told
};

// One needle to lend, by its diameter (to 0.01 mm) and the length as sold.
struct NeedleTotal {
  NeedleName needle;
  std::optional<Length> cable;  // absent where none sold is long enough
  int count = 0;
};

struct RosterTotals {
  int planned = 0;
  std::vector<WoolTotal> wool;       // by category, finest first
  std::vector<NeedleTotal> needles;  // thinnest first, then shortest
};

RosterTotals totals_of(const std::vector<PairLine>& lines);

}  // namespace twinround

// Socks for many feet that nobody has measured: which sizes, how many of each, how much wool.
#pragma once

#include <optional>
#include <vector>

#include "foot_population.h"
#include "plan.h"
#include "result.h"
#include "size_band.h"
#include "size_choice.h"
#include "size_shares.h"
#include "wool_lots.h"
#include "yarn_lot.h"

namespace twinround {

// Wool at hand. Without a category it is taken for the drive's yarn where its thickness is within a
// tenth of it (ASSUMPTION), or is not told.
struct WoolLot {
  YarnLot told;
  std::optional<int> category;
};

// Of the feet, where nothing is said. ASSUMPTION.
inline constexpr double kWantedShare = 0.9;

struct DriveRequest {
  PlanRequest
      plan;  // swatch or label, yarn, rib, toe, cuff, eases; its foot and leg are not looked at
  LegRule leg;
  int pairs = 0;
  std::vector<FeetGroup> groups;
  std::optional<int> sizes;  // so many; left out, as few as reach the wanted share
  double wanted_share = kWantedShare;
  std::vector<WoolLot> lots;
};

// Give or take of every share, against the feet as surveyed: half a percentage point at the most.
// The integration itself is ten times closer (cover_table).
inline constexpr double kShareError = 0.005;

struct DriveSize {
  SockSize size;
  // Of its plan, made for the foot of that length whose ball girth it fits with 10 % of ease.
  Length ball_girth, leg_height, length, girth;
  Rounds rounds;
  Length yarn_pair;  // with the margin
  Duration time_pair;
  SizeShare share;
  int pairs = 0;
  LengthBand fits_lengths;      // all lengths it serves
  LengthBand fits_balls;        // and ball girths, where a median heel goes with them
  std::vector<ShoeBand> shoes;  // of the lengths it is counted for
  Length yarn;                  // of all its pairs, with the margin; likewise the mass
  Mass mass;
};

struct LotFigures {
  Length length;  // as told, or by the thickness; likewise the mass
  Mass mass;
  bool is_same_yarn = false;
  LotShare share;  // empty where it is not
};

struct Drive {
  double wanted_share = kWantedShare;  // as asked for; likewise the leg
  LegRule leg;
  std::vector<DriveSize> sizes;   // narrow to wide
  double share = 0;               // of all feet that they serve together
  double at_most = 0;             // no choice of so many sizes serves more
  bool is_reached = false;        // the wanted share
  bool is_fewest = false;         // no fewer sizes reach it, as far as could be ruled out
  std::vector<double> by_number;  // what 1, 2, ... sizes serve that each are wider and longer than
                                  // the last, up to where another adds nothing
  Length yarn;
  Mass mass;
  bool is_mass_guessed = false;  // from the category, not from a ball
  std::optional<Balls> balls;
  std::vector<LotFigures> lots;
  LotsMake lots_make;  // its lots are those of the same yarn
  std::vector<Caution> cautions;
};

// Refused as a plan is for swatch and label; nobody_served at /swatch where no size serves anybody;
// where no size can be knit, with what is wrong with the plan of the size that serves most
// (leg_too_short and the like).
Result<Drive> plan_drive(const DriveRequest& request);

}  // namespace twinround

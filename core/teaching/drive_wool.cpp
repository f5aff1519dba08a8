#include <cmath>

#include "drive_parts.h"
#include "rounding.h"

namespace twinround {

namespace {

constexpr double kThicknessApart = 0.10;  // ASSUMPTION, as of a substitute yarn

bool is_same_yarn(const WoolLot& lot, const DriveYarn& yarn) {
  if (lot.category) return *lot.category == yarn.category;
  const std::optional<double> tex = tex_of_lot(lot.told);
  return !tex || at_least(kThicknessApart, std::abs(*tex / yarn.tex - 1.0));
}

void share_lots(Drive& result, const DriveRequest& drive, const DriveYarn& yarn) {
  std::vector<PairsWanted> wanted;
  for (const DriveSize& size : result.sizes) {
    wanted.push_back({size.pairs, size.yarn_pair});
  }
  std::vector<Length> usable;
  for (const WoolLot& lot : drive.lots) {
    const bool same = is_same_yarn(lot, yarn);
    const Length length = length_of_lot(lot.told, yarn.tex);
    if (same) usable.push_back(length);
    result.lots.push_back({length, mass_of_lot(lot.told, yarn.tex), same, {}});
  }
  result.lots_make = pairs_from(usable, wanted);
  std::size_t next = 0;
  for (LotFigures& lot : result.lots) {
    if (lot.is_same_yarn) lot.share = result.lots_make.lots[next++];
  }
}

}  // namespace

void drive_wool(Drive& result, const DriveRequest& drive, const DriveYarn& yarn) {
  result.is_mass_guessed = yarn.is_mass_guessed;
  for (DriveSize& size : result.sizes) {
    size.yarn = size.pairs * size.yarn_pair;
    size.mass = Mass::from_g(yarn.tex * size.yarn.m() / 1000.0);
    result.yarn = result.yarn + size.yarn;
    result.mass = result.mass + size.mass;
  }
  if (drive.plan.yarn.ball_length && drive.plan.yarn.ball_mass) {
    result.balls = balls_for(result.yarn, *drive.plan.yarn.ball_length);
  }
  if (!drive.lots.empty()) share_lots(result, drive, yarn);
}

}  // namespace twinround

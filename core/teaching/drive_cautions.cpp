#include <string>

#include "drive_parts.h"
#include "rounding.h"

namespace twinround {

namespace {

Caution plain(const char* field, const char* code, std::string message) {
  return {field, code, {}, {}, std::move(message)};
}

std::string percent(double share) {
  const int tenths = round_half_up(1000 * share);
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " %";
}

void caution_feet(std::vector<Caution>& cautions, const DriveRequest& drive) {
  bool grown = false;
  bool children = false;
  for (const FeetGroup& group : drive.groups) {
    (group.body == Body::child ? children : grown) |= group.share > 0;
  }
  if (grown) {
    cautions.push_back(plain(
        "/drive/groups", "feet_of_soldiers",
        "The grown-up feet behind these shares are soldiers', measured in 2012: younger and fitter "
        "than the public. Swollen or older feet may be wider."));
  }
  if (children) {
    cautions.push_back(
        plain("/drive/groups", "children_estimated",
              "The children's feet were measured in 1977, and only their lengths: their girths are "
              "estimated."));
  }
}

void caution_sizes(std::vector<Caution>& cautions, const Drive& result, const DriveRequest& drive) {
  const auto sizes = static_cast<double>(result.sizes.size());
  if (drive.sizes && *drive.sizes > static_cast<int>(result.sizes.size())) {
    Caution fewer = plain("/drive/sizes", "fewer_sizes_do",
                          "So many sizes serve no more feet than these fewer ones.");
    fewer.numbers = {{"asked", static_cast<double>(*drive.sizes)}, {"sizes", sizes}};
    cautions.push_back(fewer);
  }
  if (!drive.sizes && !result.is_reached) {
    Caution missed = plain("/drive/wantedShare", "share_not_reached",
                           "No number of sizes up to 12 serves the share wanted; these serve " +
                               percent(result.share) + ".");
    missed.numbers = {{"wanted", drive.wanted_share}, {"share", result.share}};
    cautions.push_back(missed);
  }
  if (result.at_most > result.share + kSlack + kTie) {
    Caution open = plain(
        "/drive/sizes", "better_not_ruled_out",
        "Another choice of sizes might serve more, but at most " + percent(result.at_most) + ".");
    open.numbers = {{"share", result.share}, {"atMost", result.at_most}};
    cautions.push_back(open);
  }
}

void caution_lots(std::vector<Caution>& cautions, const Drive& result, const DriveRequest& drive) {
  for (std::size_t i = 0; i < result.lots.size(); ++i) {
    if (result.lots[i].is_same_yarn) continue;
    cautions.push_back(plain(("/drive/lots/" + std::to_string(i)).c_str(), "lot_of_another_yarn",
                             "This wool is of another thickness, and knits to another gauge: it is "
                             "left out."));
  }
  if (drive.lots.empty() || result.lots_make.in_all >= drive.pairs) return;
  Caution short_of = plain("/drive/lots", "lots_fall_short",
                           "The wool at hand makes " + std::to_string(result.lots_make.in_all) +
                               " of the " + std::to_string(drive.pairs) + " pairs.");
  short_of.numbers = {{"made", static_cast<double>(result.lots_make.in_all)},
                      {"pairs", static_cast<double>(drive.pairs)},
                      {"atMost", static_cast<double>(result.lots_make.at_most)}};
  cautions.push_back(short_of);
}

}  // namespace

std::vector<Caution> drive_cautions(const Drive& result, const DriveRequest& drive) {
  std::vector<Caution> cautions;
  caution_feet(cautions, drive);
  caution_sizes(cautions, result, drive);
  caution_lots(cautions, result, drive);
  return cautions;
}

}  // namespace twinround

#include "drive_writer.h"

#include "note_writer.h"

namespace twinround {
namespace {

const char* word_of(ShoeScale scale) {
  switch (scale) {
    case ShoeScale::uk:
      return "uk";
    case ShoeScale::us_women:
      return "us-women";
    case ShoeScale::us_men:
      return "us-men";
    case ShoeScale::eu:
    case ShoeScale::mondopoint:  // on no band
      break;
  }
  return "eu";
}

void write_wholes(JsonWriter& json, const char* name, const std::vector<int>& numbers) {
  json.key(name).open_list();
  for (const int number : numbers) json.whole(number);
  json.close_list();
}

void write_band(JsonWriter& json, const DriveSize& size) {
  json.key("band").open_object();
  json.key("footFromMm").real(size.share.lengths.from.mm());
  json.key("footToMm").real(size.share.lengths.to.mm());
  json.key("fitsFromMm").real(size.fits_lengths.from.mm());
  json.key("fitsToMm").real(size.fits_lengths.to.mm());
  json.key("ballFromMm").real(size.fits_balls.from.mm());
  json.key("ballToMm").real(size.fits_balls.to.mm());
  json.key("shoes").open_list();
  for (const ShoeBand& shoes : size.shoes) {
    json.open_object();
    json.key("scale").text(word_of(shoes.scale));
    json.key("from").whole(shoes.from);
    json.key("to").whole(shoes.to);
    json.close_object();
  }
  json.close_list();
  json.close_object();
}

void write_size(JsonWriter& json, const DriveSize& size) {
  const auto part = [&size](Body body) {
    return size.share.by_body[static_cast<std::size_t>(body)];
  };
  json.open_object();
  json.key("pairs").whole(size.pairs);
  json.key("stitchCount").whole(size.size.stitches.value());
  json.key("totalRounds").whole(size.rounds.value());
  json.key("footMm").real(size.size.foot.mm());
  json.key("ballGirthMm").real(size.ball_girth.mm());
  json.key("legHeightMm").real(size.leg_height.mm());
  json.key("lengthMm").real(size.length.mm());
  json.key("finishedGirthMm").real(size.girth.mm());
  json.key("serves").real(size.share.serves);
  json.key("share").real(size.share.counted);
  json.key("women").real(part(Body::woman));
  json.key("men").real(part(Body::man));
  json.key("children").real(part(Body::child));
  write_band(json, size);
  json.key("mPerPair").real(size.yarn_pair.m());
  json.key("m").real(size.yarn.m());
  json.key("g").real(size.mass.g());
  json.key("minutes").real(size.time_pair.minutes());
  json.close_object();
}

void write_at_hand(JsonWriter& json, const Drive& drive) {
  json.key("atHand").open_object();
  json.key("pairs").whole(drive.lots_make.in_all);
  json.key("pairsAtMost").whole(drive.lots_make.at_most);
  write_wholes(json, "pairsOfSize", drive.lots_make.pairs);
  json.key("lots").open_list();
  for (const LotFigures& lot : drive.lots) {
    json.open_object();
    json.key("m").real(lot.length.m());
    json.key("g").real(lot.mass.g());
    json.key("isSameYarn").yes_no(lot.is_same_yarn);
    write_wholes(json, "pairsOfSize", lot.share.pairs);
    write_wholes(json, "alone", lot.share.alone);
    if (lot.is_same_yarn) json.key("leftM").real(lot.share.left.m());
    json.close_object();
  }
  json.close_list();
  json.close_object();
}

}  // namespace

void write_drive(JsonWriter& json, const Drive& drive) {
  json.open_object();
  json.key("wantedShare").real(drive.wanted_share);
  if (drive.leg.of_foot > 0) json.key("legOfFoot").real(drive.leg.of_foot);
  json.key("share").real(drive.share);
  json.key("shareError").real(kShareError);
  json.key("atMost").real(drive.at_most);
  json.key("isReached").yes_no(drive.is_reached);
  json.key("isFewest").yes_no(drive.is_fewest);
  json.key("shareByNumber").open_list();
  for (const double share : drive.by_number) json.real(share);
  json.close_list();
  json.key("sizes").open_list();
  for (const DriveSize& size : drive.sizes) write_size(json, size);
  json.close_list();
  json.key("wool").open_object();
  json.key("m").real(drive.yarn.m());
  json.key("g").real(drive.mass.g());
  json.key("massGuessed").yes_no(drive.is_mass_guessed);
  if (drive.balls) json.key("balls").whole(drive.balls->count);
  json.close_object();
  if (!drive.lots.empty()) write_at_hand(json, drive);
  json.key("cautions");
  write_problems(json, drive.cautions);
  json.close_object();
}

}  // namespace twinround

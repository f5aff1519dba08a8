#include "yarn_writer.h"

namespace twinround {
namespace {

void write_yarn_sections(JsonWriter& json, const YarnNeed& need) {
  const struct {
    const char* name;
    Length yarn;
  } sections[] = {{"castOn", need.cast_on},    {"toe", need.toe},   {"spiral", need.spiral},
                  {"widening", need.widening}, {"cuff", need.cuff}, {"bindOff", need.bind_off},
                  {"tails", need.tails}};
  json.open_list();
  for (const auto& section : sections) {
    json.open_object();
    json.key("section").text(section.name);
    json.key("m").real(section.yarn.m());
    json.close_object();
  }
  json.close_list();
}

void write_substitute(JsonWriter& json, const SubstituteYarn& other) {
  json.open_object();
  json.key("tex").real(other.tex);
  json.key("thicknessApart").real(other.thickness_apart);
  json.key("gPerPair").real(other.pair_mass.g());
  json.key("gWithMargin").real(other.with_margin_mass.g());
  json.key("balls").whole(other.balls.count);
  json.key("ballsJust").yes_no(other.balls.just);
  json.key("spareM").real(other.balls.spare.m());
  json.key("firmness").text(word_of(other.firmness));
  json.close_object();
}

}  // namespace

const char* word_of(Firmness firmness) {
  switch (firmness) {
    case Firmness::loose:
      return "loose";
    case Firmness::usual:
      return "usual";
    case Firmness::firm:
      break;
  }
  return "firm";
}

void write_yarn(JsonWriter& json, const YarnFigures& yarn) {
  json.open_object();
  json.key("mmPerStitch").real(yarn.loop.mm());
  json.key("from").text(yarn.weighed ? "weighed" : "loop-geometry");
  if (yarn.weighed && yarn.geometry_loop) {
    json.key("geometryMmPerStitch").real(yarn.geometry_loop->mm());
  }
  json.key("mPerSock").real(yarn.need.sock.m());
  json.key("mPerPair").real(yarn.need.pair.m());
  json.key("mWithMargin").real(yarn.need.with_margin.m());
  json.key("mOfLastRound").real(yarn.last_round.m());
  if (yarn.sock_mass) json.key("gPerSock").real(yarn.sock_mass->g());
  if (yarn.pair_mass) json.key("gPerPair").real(yarn.pair_mass->g());
  if (yarn.with_margin_mass) json.key("gWithMargin").real(yarn.with_margin_mass->g());
  if (yarn.mass_guessed) json.key("massGuessed").yes_no(true);
  if (yarn.balls) {
    json.key("balls").whole(yarn.balls->count);
    json.key("ballsJust").yes_no(yarn.balls->just);
    json.key("spareM").real(yarn.balls->spare.m());
  }
  json.key("tex").real(yarn.tex);
  json.key("relativeError").real(yarn.relative_error);
  if (yarn.substitute) {
    json.key("substitute");
    write_substitute(json, *yarn.substitute);
  }
  json.key("sections");
  write_yarn_sections(json, yarn.need);
  json.close_object();
}

}  // namespace twinround

#include "line_writer.h"

#include "needle_writer.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;

// clang-format off
constexpr Field kLine[] = {
  {.pointer = "", .about = "The figures of one pair in a table; as its plan has them"},
  {.pointer = "/category", .about = "Yarn weight category, named or read off the gauge", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/stitchCount", .about = "Stitches in a round of one sock", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/totalRounds", .about = "Rounds of one sock, toe to edge", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/mPerPair", .about = "Yarn of the pair", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/mWithMargin", .about = "Yarn to buy for the pair", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/yarnError", .about = "Relative give or take of the yarn", .kind = Kind::number, .need = kAlways},
  {.pointer = "/gPerSock", .about = "Mass of one sock", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/gWithMargin", .about = "Mass to buy for the pair", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/ball", .about = "The ball it is bought in; absent where neither ball nor category is known"},
  {.pointer = "/ball/g", .about = "Mass of one ball", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/ball/m", .about = "Yarn in one ball", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/ball/usual", .about = "Whether it is the category's usual ball, for want of a label", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/ball/count", .about = "Balls to buy for the pair", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/ball/just", .about = "Whether that number is a close thing", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/needle", .about = "The needle", .need = kAlways},
  {.pointer = "/needle/mm", .about = "Diameter", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/needle/us", .about = "Its US name", .kind = Kind::text},
  {.pointer = "/needle/uk", .about = "Its UK name", .kind = Kind::text},
  {.pointer = "/needle/cableMm", .about = "Its length as sold; absent where none is long enough", .kind = Kind::number, .unit = "mm"},
  {.pointer = "/minutes", .about = "Knitting time of the pair", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/minutesError", .about = "Its relative give or take", .kind = Kind::number, .need = kAlways},
};
// clang-format on

}  // namespace

std::span<const Field> line_fields() {
  return kLine;
}

void write_line(JsonWriter& json, const PairLine& line) {
  json.open_object();
  json.key("category").whole(line.category);
  json.key("stitchCount").whole(line.stitches.value());
  json.key("totalRounds").whole(line.rounds.value());
  json.key("mPerPair").real(line.pair.m());
  json.key("mWithMargin").real(line.with_margin.m());
  json.key("yarnError").real(line.yarn_error);
  json.key("gPerSock").real(line.sock_mass.g());
  json.key("gWithMargin").real(line.with_margin_mass.g());
  if (line.ball && line.balls) {
    json.key("ball").open_object();
    json.key("g").real(line.ball->mass.g());
    json.key("m").real(line.ball->length.m());
    json.key("usual").yes_no(line.ball->usual);
    json.key("count").whole(line.balls->count);
    json.key("just").yes_no(line.balls->just);
    json.close_object();
  }
  json.key("needle").open_object();
  write_needle_name(json, line.needle);
  if (line.cable) json.key("cableMm").real(line.cable->mm());
  json.close_object();
  json.key("minutes").real(line.time.minutes());
  json.key("minutesError").real(line.time_error);
  json.close_object();
}

}  // namespace twinround

#include "fields.h"

#include <array>

namespace twinround {
namespace {

using Request = PlanRequest;
using Value = FieldValue;

Length mm(const Value& value) {
  return Length::from_mm(value.number);
}

// The item of a word's place: pick(value, Lean::left, Lean::right, Lean::mirrored).
template <class T, class... More>
T pick(const Value& value, T first, More... more) {
  const std::array<T, 1 + sizeof...(More)> all{first, more...};
  return all[static_cast<std::size_t>(value.whole)];
}

Reading& reading(Request& request, int item) {
  return request.swatch.readings[static_cast<std::size_t>(item)];
}

ShoeInput& shoe(Request& request) {
  if (!request.foot.shoe) request.foot.shoe.emplace();
  return *request.foot.shoe;
}

// Ranges are the contract's. Steps: lengths half a millimetre, stitches and rounds a quarter.
// clang-format off
constexpr Field kFields[] = {
  {.pointer = "", .about = "What a plan is asked with"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = Need::always, .min = kVersion, .max = kVersion, .step = 1},

  {.pointer = "/swatch", .about = "The swatch", .need = Need::by_rule},
  {.pointer = "/swatch/fabric",
   .about = "What the swatch is knit in; rib is the sock's own rib, relaxed",
   .kind = Kind::word, .standard = "stockinette", .words = "stockinette | rib",
   .set = [](Request& r, int, const Value& v) {
     r.swatch.fabric = pick(v, Fabric::stockinette, Fabric::rib); }},
  {.pointer = "/swatch/washed",
   .about = "Whether the swatch was washed and dried before it was measured",
   .kind = Kind::yes_no, .standard = "true",
   .set = [](Request& r, int, const Value& v) { r.swatch.washed = v.whole == 1; }},
  {.pointer = "/swatch/needleMm", .about = "Diameter of the swatch's needles",
   .kind = Kind::number, .min = 1, .max = 25, .step = 0.25, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.swatch.needle = mm(v); }},
  {.pointer = "/swatch/readings", .about = "Measurements of the swatch",
   .kind = Kind::list, .need = Need::always, .min = 1, .max = 12},
  {.pointer = "/swatch/readings/*", .about = "One measurement of the swatch",
   .set = [](Request& r, int item, const Value&) {
     r.swatch.readings.resize(static_cast<std::size_t>(item) + 1); }},
  {.pointer = "/swatch/readings/*/stitches", .about = "Stitches counted over the width",
   .kind = Kind::number, .need = Need::always, .min = 1, .max = 400, .step = 0.25,
   .unit = "stitches",
   .set = [](Request& r, int item, const Value& v) { reading(r, item).stitches = v.number; }},
  {.pointer = "/swatch/readings/*/widthMm", .about = "Width over which the stitches were counted",
   .kind = Kind::number, .need = Need::always, .min = 10, .max = 500, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int item, const Value& v) { reading(r, item).width = mm(v); }},
  {.pointer = "/swatch/readings/*/rounds", .about = "Rounds or rows counted over the height",
   .kind = Kind::number, .need = Need::by_rule, .min = 1, .max = 600, .step = 0.25,
   .unit = "rounds", .partner = "heightMm",
   .set = [](Request& r, int item, const Value& v) { reading(r, item).rounds = v.number; }},
  {.pointer = "/swatch/readings/*/heightMm", .about = "Height over which the rounds were counted",
   .kind = Kind::number, .need = Need::by_rule, .min = 10, .max = 500, .step = 0.5,
   .unit = "mm", .partner = "rounds",
   .set = [](Request& r, int item, const Value& v) { reading(r, item).height = mm(v); }},
  {.pointer = "/swatch/stretchedWidthMm",
   .about = "Width of the first reading pulled as far as hands pull it",
   .kind = Kind::number, .min = 10, .max = 1500, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.swatch.stretched_width = mm(v); }},
  {.pointer = "/swatch/massG", .about = "Mass of the weighed swatch",
   .kind = Kind::number, .min = 0.5, .max = 200, .step = 0.1, .unit = "g",
   .partner = "massStitches",
   .set = [](Request& r, int, const Value& v) { r.swatch.mass = Mass::from_g(v.number); }},
  {.pointer = "/swatch/massStitches", .about = "Stitches in the weighed swatch",
   .kind = Kind::number, .min = 50, .max = 20000, .step = 1, .unit = "stitches",
   .partner = "massG",
   .set = [](Request& r, int, const Value& v) { r.swatch.mass_stitches = v.number; }},

  {.pointer = "/yarn", .about = "The yarn and its ball band"},
  {.pointer = "/yarn/category", .about = "Yarn weight category, 0 lace to 7 jumbo",
   .kind = Kind::whole, .min = 0, .max = 7, .step = 1,
   .set = [](Request& r, int, const Value& v) { r.yarn.category = v.whole; }},
  {.pointer = "/yarn/ballG", .about = "Mass of one ball",
   .kind = Kind::number, .min = 5, .max = 2000, .step = 1, .unit = "g", .partner = "ballM",
   .set = [](Request& r, int, const Value& v) { r.yarn.ball_mass = Mass::from_g(v.number); }},
  {.pointer = "/yarn/ballM", .about = "Length of yarn in one ball",
   .kind = Kind::number, .min = 5, .max = 5000, .step = 1, .unit = "m", .partner = "ballG",
   .set = [](Request& r, int, const Value& v) { r.yarn.ball_length = Length::from_m(v.number); }},
  {.pointer = "/yarn/substitute", .about = "Another yarn to knit the same sock from, by its label"},
  {.pointer = "/yarn/substitute/ballG", .about = "Mass of one ball of it",
   .kind = Kind::number, .need = Need::always, .min = 5, .max = 2000, .step = 1, .unit = "g",
   .set = [](Request& r, int, const Value& v) { r.yarn.substitute_mass = Mass::from_g(v.number); }},
  {.pointer = "/yarn/substitute/ballM", .about = "Length of yarn in one ball of it",
   .kind = Kind::number, .need = Need::always, .min = 5, .max = 5000, .step = 1, .unit = "m",
   .set = [](Request& r, int, const Value& v) { r.yarn.substitute_length = Length::from_m(v.number); }},

  {.pointer = "/foot", .about = "The foot, measured or by its shoe", .need = Need::always},
  {.pointer = "/foot/lengthMm", .about = "Length of the foot, heel to longest toe",
   .kind = Kind::number, .need = Need::by_rule, .min = 80, .max = 400, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.foot.length = mm(v); }},
  {.pointer = "/foot/ballGirthMm", .about = "Girth round the ball of the foot",
   .kind = Kind::number, .need = Need::by_rule, .min = 80, .max = 400, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.foot.ball_girth = mm(v); }},
  {.pointer = "/foot/heelAnkleGirthMm",
   .about = "Girth round the heel and over the bend of the ankle",
   .kind = Kind::number, .min = 80, .max = 600, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.foot.heel_ankle_girth = mm(v); }},
  {.pointer = "/foot/ankleGirthMm", .about = "Girth of the ankle, above the bones",
   .kind = Kind::number, .min = 80, .max = 600, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.foot.ankle_girth = mm(v); }},
  {.pointer = "/foot/calfGirthMm", .about = "Girth of the calf at its widest",
   .kind = Kind::number, .min = 80, .max = 700, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.foot.calf_girth = mm(v); }},
  {.pointer = "/foot/shoe", .about = "A shoe size in place of a measured foot",
   .need = Need::by_rule},
  {.pointer = "/foot/shoe/scale", .about = "Scale of the shoe size",
   .kind = Kind::word, .need = Need::always, .words = "mondopoint | eu | us-men | us-women | uk",
   .set = [](Request& r, int, const Value& v) {
     shoe(r).scale = pick(v, ShoeScale::mondopoint, ShoeScale::eu, ShoeScale::us_men,
                          ShoeScale::us_women, ShoeScale::uk); }},
  {.pointer = "/foot/shoe/size",
   .about = "Shoe size on its scale; mondopoint is the foot's length in mm",
   .kind = Kind::number, .need = Need::always, .min = kOtherSizes.min,
   .max = kMondopointSizes.max, .step = 0.5,
   .set = [](Request& r, int, const Value& v) { shoe(r).size = v.number; }},
  {.pointer = "/foot/body", .about = "Whose foot it is, to estimate its girth from its length",
   .kind = Kind::word, .need = Need::by_rule, .words = "woman | man | child",
   .set = [](Request& r, int, const Value& v) {
     r.foot.body = pick(v, Body::woman, Body::man, Body::child); }},

  {.pointer = "/legHeightMm", .about = "Height of the sock's top edge above the floor",
   .kind = Kind::number, .need = Need::always, .min = 40, .max = 700, .step = 0.5, .unit = "mm",
   .set = [](Request& r, int, const Value& v) { r.leg_height = mm(v); }},
  {.pointer = "/cuffMm", .about = "Height of the straight cuff",
   .kind = Kind::number, .min = 0, .max = 300, .step = 0.5, .unit = "mm", .standard = "30",
   .set = [](Request& r, int, const Value& v) { r.cuff = mm(v); }},

  {.pointer = "/rib", .about = "The rib and how it moves"},
  {.pointer = "/rib/knit", .about = "Knit stitches in a repeat of the rib",
   .kind = Kind::whole, .min = 1, .max = 12, .step = 1, .unit = "stitches", .standard = "2",
   .set = [](Request& r, int, const Value& v) { r.rib.knit = v.whole; }},
  {.pointer = "/rib/purl", .about = "Purl stitches in a repeat of the rib",
   .kind = Kind::whole, .min = 1, .max = 12, .step = 1, .unit = "stitches", .standard = "2",
   .set = [](Request& r, int, const Value& v) { r.rib.purl = v.whole; }},
  {.pointer = "/rib/roundsPerShift",
   .about = "Rounds between two moves of the rib by one stitch; 0 keeps it straight",
   .kind = Kind::whole, .min = 0, .max = 40, .step = 1, .unit = "rounds", .standard = "4",
   .set = [](Request& r, int, const Value& v) { r.rib.rounds_per_shift = v.whole; }},
  {.pointer = "/rib/lean",
   .about = "Which way the rib leans; mirrored: the second sock is the first one's mirror",
   .kind = Kind::word, .standard = "left", .words = "left | right | mirrored",
   .set = [](Request& r, int, const Value& v) {
     r.rib.lean = pick(v, Lean::left, Lean::right, Lean::mirrored); }},

  {.pointer = "/girthEase",
   .about = "How much wider (+) or narrower (-) than the ball girth the sock is, as a share of it",
   .kind = Kind::number, .min = -0.40, .max = 0.20, .step = 0.01, .standard = "-0.1",
   .set = [](Request& r, int, const Value& v) { r.girth_ease = v.number; }},
  {.pointer = "/lengthEase",
   .about = "How much longer (+) or shorter (-) than the foot the sock's foot is, as a share of it",
   .kind = Kind::number, .min = -0.20, .max = 0.20, .step = 0.01, .standard = "-0.04",
   .set = [](Request& r, int, const Value& v) { r.length_ease = v.number; }},

  {.pointer = "/toe", .about = "The toe"},
  {.pointer = "/toe/share", .about = "Length of the toe as a share of the foot's length",
   .kind = Kind::number, .min = 0.05, .max = 0.50, .step = 0.01, .standard = "0.25",
   .set = [](Request& r, int, const Value& v) { r.toe_share = v.number; }},
  {.pointer = "/toe/tipShare", .about = "Stitches cast on as a share of the sock's count",
   .kind = Kind::number, .min = 0.10, .max = 1, .step = 0.01, .standard = "0.4",
   .set = [](Request& r, int, const Value& v) { r.tip_share = v.number; }},
  {.pointer = "/toe/shape", .about = "Whether the toe widens fast and then slowly, evenly, or faster on the great-toe side",
   .kind = Kind::word, .standard = "round", .words = "round | even | left-right",
   .set = [](Request& r, int, const Value& v) {
     r.toe_shape = pick(v, ToeShape::round, ToeShape::even, ToeShape::left_right); }},

  {.pointer = "/stitchCount", .about = "The knitter's own stitch count; left out, one is advised",
   .kind = Kind::whole, .min = 8, .max = 400, .step = 1, .unit = "stitches",
   .set = [](Request& r, int, const Value& v) { r.stitch_count = v.whole; }},
  {.pointer = "/pace", .about = "How fast the knitter knits"},
  {.pointer = "/pace/stitchesPerMinute", .about = "Stitches knit in a minute",
   .kind = Kind::number, .min = 1, .max = 200, .step = 1, .unit = "stitches a minute",
   .standard = "15",
   .set = [](Request& r, int, const Value& v) { r.stitches_per_minute = v.number; }},
  {.pointer = "/yarnMargin", .about = "Yarn bought beyond the need, as a share of it",
   .kind = Kind::number, .min = 0, .max = 1, .step = 0.01, .standard = "0.1",
   .set = [](Request& r, int, const Value& v) { r.yarn_margin = v.number; }},
};
// clang-format on

}  // namespace

std::span<const Field> request_fields() {
  return kFields;
}

const Field& request_field(std::string_view pointer) {
  const Field* found = kFields;
  for (const Field& field : kFields) {
    if (field.pointer == pointer) found = &field;
  }
  return *found;
}

std::string_view parent_pointer(std::string_view pointer) {
  const auto slash = pointer.rfind('/');
  return slash == std::string_view::npos ? std::string_view{} : pointer.substr(0, slash);
}

std::string_view field_name(std::string_view pointer) {
  const auto slash = pointer.rfind('/');
  return slash == std::string_view::npos ? pointer : pointer.substr(slash + 1);
}

bool in_list(const Field& field) {
  return field.pointer.find('*') != std::string_view::npos;
}

std::string pointer_of(const Field& field, int item) {
  std::string pointer(field.pointer);
  const auto star = pointer.find('*');
  if (star != std::string::npos) pointer.replace(star, 1, std::to_string(item));
  return pointer;
}

std::string_view word_at(std::string_view words, int place) {
  constexpr std::string_view kBetween = " | ";
  for (; place > 0; --place) {
    const auto end = words.find(kBetween);
    if (end == std::string_view::npos) return {};
    words.remove_prefix(end + kBetween.size());
  }
  return words.substr(0, words.find(kBetween));
}

int word_place(std::string_view words, std::string_view word) {
  for (int place = 0; !word_at(words, place).empty(); ++place) {
    if (word_at(words, place) == word) return place;
  }
  return -1;
}

}  // namespace twinround

#include "link_rows.h"

namespace twinround {
namespace {

using Group = LinkGroup;
using Grids = std::array<LinkGrid, 2>;

constexpr LinkGrid grid(int parts, int first, int last) {
  return {static_cast<std::int16_t>(parts), static_cast<std::int16_t>(first),
          static_cast<std::int16_t>(last)};
}

// Half millimetres, and eightieths of an inch: halves to sixteenths, tenths and twentieths are all
// among them. Millimetres typed are said as centimetres, as the form itself shows them. An inch is
// 25.4 mm, so a millimetre is 400/127 eightieths.
constexpr LinkRow length(std::string_view pointer, Group group, int min_mm, int max_mm) {
  return {
      pointer,
      group,
      "cm | in",
      {grid(20, 2 * min_mm, 2 * max_mm), grid(80, (min_mm * 400 + 126) / 127, max_mm * 400 / 127)}};
}
constexpr LinkRow parted(std::string_view pointer, Group group, std::string_view unit, int parts,
                         int min, int max) {
  return {pointer, group, unit, {grid(parts, parts * min, parts * max)}};
}
// Stitches and rounds: quarters.
constexpr LinkRow counted(std::string_view pointer, Group group, int min, int max) {
  return parted(pointer, group, "", 4, min, max);
}
constexpr LinkRow whole(std::string_view pointer, Group group, int min, int max) {
  return parted(pointer, group, "", 1, min, max);
}
// Half percents.
constexpr LinkRow percent(std::string_view pointer, Group group, int min, int max) {
  return parted(pointer, group, "%", 2, min, max);
}
constexpr LinkRow choice(std::string_view pointer, Group group, std::string_view words) {
  return {pointer, group, words, {}};
}
// Of a ball, 5 to 2000 g and 5 to 5000 m: halves, of ounces hundredths.
constexpr LinkRow ball_mass(std::string_view pointer, Group group) {
  return {pointer, group, "g | oz", {grid(2, 10, 4000), grid(100, 18, 7054)}};
}
constexpr LinkRow ball_length(std::string_view pointer, Group group) {
  return {pointer, group, "m | yd", {grid(2, 10, 10000), grid(2, 11, 10936)}};
}

// clang-format off
constexpr LinkRow kRows[] = {
  choice("/swatch", Group::ways, "swatch | label"),
  choice("/foot", Group::ways, "tape | shoe"),

  length("/foot/lengthMm", Group::foot, 80, 400),
  length("/foot/ballGirthMm", Group::foot, 80, 400),
  length("/foot/heelAnkleGirthMm", Group::foot, 80, 600),
  length("/foot/ankleGirthMm", Group::foot, 80, 600),
  length("/foot/calfGirthMm", Group::foot, 80, 700),
  length("/legHeightMm", Group::foot, 40, 700),

  parted("/swatch/needleMm", Group::yarn, "mm", 20, 1, 25),
  whole("/yarn/category", Group::yarn, 0, 7),
  ball_mass("/yarn/ballG", Group::yarn),
  ball_length("/yarn/ballM", Group::yarn),

  length("/cuffMm", Group::rib, 0, 300),
  whole("/rib/knit", Group::rib, 1, 12),
  whole("/rib/purl", Group::rib, 1, 12),
  whole("/rib/roundsPerShift", Group::rib, 0, 40),
  choice("/rib/lean", Group::rib, "left | right | mirrored"),

  choice("/swatch/fabric", Group::fit, "stockinette | rib"),
  choice("/swatch/washed", Group::fit, "true | false"),
  percent("/girthEase", Group::fit, -40, 20),
  percent("/lengthEase", Group::fit, -20, 20),
  percent("/toe/share", Group::fit, 5, 50),
  percent("/toe/tipShare", Group::fit, 10, 100),
  choice("/toe/shape", Group::fit, "round | even | left-right"),
  parted("/pace/stitchesPerMinute", Group::fit, "", 2, 1, 200),
  percent("/yarnMargin", Group::fit, 0, 100),

  whole("/stitchCount", Group::count, 8, 400),

  choice("/foot/shoe/scale", Group::shoe, "mondopoint | eu | us-men | us-women | uk"),
  // Half sizes, and thirds, which some makers have.
  parted("/foot/shoe/size", Group::shoe, "", 6, 0, 400),
  choice("/foot/body", Group::shoe, "woman | man | child"),

  ball_mass("/yarn/substitute/ballG", Group::substitute),
  ball_length("/yarn/substitute/ballM", Group::substitute),

  length("/swatch/stretchedWidthMm", Group::stretch, 10, 1500),
  // 0.5 to 200 g.
  {"/swatch/massG", Group::stretch, "g | oz", {grid(10, 5, 2000), grid(100, 2, 705)}},
  whole("/swatch/massStitches", Group::stretch, 50, 20000),

  counted("/swatch/readings/*/stitches", Group::readings, 1, 400),
  length("/swatch/readings/*/widthMm", Group::readings, 10, 500),
  counted("/swatch/readings/*/rounds", Group::readings, 1, 600),
  length("/swatch/readings/*/heightMm", Group::readings, 10, 500),
};
// clang-format on

int word_count(std::string_view words) {
  int count = 1;
  for (const char c : words) count += c == '|' ? 1 : 0;
  return count;
}

const LinkGrid& grid_of(const LinkRow& row, int unit) {
  return row.grids[static_cast<std::size_t>(unit)];
}

// How many values a unit has.
int size_of(const LinkRow& row, int unit) {
  if (is_choice(row)) return word_count(row.words);
  return grid_of(row, unit).last - grid_of(row, unit).first + 1;
}

}  // namespace

std::span<const LinkRow> link_rows_1() {
  return kRows;
}

bool is_choice(const LinkRow& row) {
  return row.grids[0].parts == 0;
}

int unit_count(const LinkRow& row) {
  return row.grids[1].parts > 0 ? 2 : 1;
}

// Not said, emptied in each unit, then each unit's values.
int value_count(const LinkRow& row) {
  int count = 1;
  for (int unit = 0; unit < unit_count(row); ++unit) count += 1 + size_of(row, unit);
  return count;
}

int code_of(const LinkRow& row, const LinkValue& value) {
  if (value.what == LinkValue::What::not_said) return 0;
  if (value.what == LinkValue::What::emptied) return 1 + value.unit;
  int code = 1 + unit_count(row);
  for (int unit = 0; unit < value.unit; ++unit) code += size_of(row, unit);
  return code + value.place - grid_of(row, value.unit).first;
}

LinkValue value_of(const LinkRow& row, int code) {
  const int units = unit_count(row);
  if (code == 0) return {};
  if (code <= units) return {LinkValue::What::emptied, code - 1, 0};
  int place = code - 1 - units;
  int unit = 0;
  while (place >= size_of(row, unit)) place -= size_of(row, unit++);
  return {LinkValue::What::said, unit, place + grid_of(row, unit).first};
}

}  // namespace twinround

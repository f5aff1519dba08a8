#include "link_rows.h"

namespace twinround {
namespace {

using Group = LinkGroup;
using Grids = std::array<LinkGrid, 2>;

// Half millimetres, and eightieths of an inch: halves to sixteenths, tenths and twentieths are all
// among them. Millimetres typed are said as centimetres, as the form itself shows them. An inch is
// 25.4 mm, so a millimetre is 400/127 eightieths.
constexpr Grids length(int min_mm, int max_mm) {
  return {{{"cm", 20, 2 * min_mm, 2 * max_mm},
           {"in", 80, (min_mm * 400 + 126) / 127, max_mm * 400 / 127}}};
}
// Stitches and rounds: quarters.
constexpr Grids counted(int min, int max) {
  return {{{"", 4, 4 * min, 4 * max}}};
}
constexpr Grids whole(int min, int max) {
  return {{{"", 1, min, max}}};
}
// Half percents.
constexpr Grids percent(int min, int max) {
  return {{{"%", 2, 2 * min, 2 * max}}};
}
// A ball, 5 to 2000 g and 5 to 5000 m: halves, of ounces hundredths.
constexpr Grids kBallMass = {{{"g", 2, 10, 4000}, {"oz", 100, 18, 7054}}};
constexpr Grids kBallLength = {{{"m", 2, 10, 10000}, {"yd", 2, 11, 10936}}};

// clang-format off
constexpr LinkRow kRows[] = {
  {"/swatch", Group::ways, {}, "swatch | label"},
  {"/foot", Group::ways, {}, "tape | shoe"},

  {"/foot/lengthMm", Group::foot, length(80, 400)},
  {"/foot/ballGirthMm", Group::foot, length(80, 400)},
  {"/foot/heelAnkleGirthMm", Group::foot, length(80, 600)},
  {"/foot/ankleGirthMm", Group::foot, length(80, 600)},
  {"/foot/calfGirthMm", Group::foot, length(80, 700)},
  {"/legHeightMm", Group::foot, length(40, 700)},

  {"/swatch/needleMm", Group::yarn, {{{"mm", 20, 20, 500}}}},
  {"/yarn/category", Group::yarn, whole(0, 7)},
  {"/yarn/ballG", Group::yarn, kBallMass},
  {"/yarn/ballM", Group::yarn, kBallLength},

  {"/cuffMm", Group::rib, length(0, 300)},
  {"/rib/knit", Group::rib, whole(1, 12)},
  {"/rib/purl", Group::rib, whole(1, 12)},
  {"/rib/roundsPerShift", Group::rib, whole(0, 40)},
  {"/rib/lean", Group::rib, {}, "left | right | mirrored"},

  {"/swatch/fabric", Group::fit, {}, "stockinette | rib"},
  {"/swatch/washed", Group::fit, {}, "true | false"},
  {"/girthEase", Group::fit, percent(-40, 20)},
  {"/lengthEase", Group::fit, percent(-20, 20)},
  {"/toe/share", Group::fit, percent(5, 50)},
  {"/toe/tipShare", Group::fit, percent(10, 100)},
  {"/toe/shape", Group::fit, {}, "round | even | left-right"},
  {"/pace/stitchesPerMinute", Group::fit, {{{"", 2, 2, 400}}}},
  {"/yarnMargin", Group::fit, percent(0, 100)},

  {"/stitchCount", Group::count, whole(8, 400)},

  {"/foot/shoe/scale", Group::shoe, {}, "mondopoint | eu | us-men | us-women | uk"},
  // Half sizes, and thirds, which some makers have.
  {"/foot/shoe/size", Group::shoe, {{{"", 6, 0, 2400}}}},
  {"/foot/body", Group::shoe, {}, "woman | man | child"},

  {"/yarn/substitute/ballG", Group::substitute, kBallMass},
  {"/yarn/substitute/ballM", Group::substitute, kBallLength},

  {"/swatch/stretchedWidthMm", Group::stretch, length(10, 1500)},
  // 0.5 to 200 g.
  {"/swatch/massG", Group::stretch, {{{"g", 10, 5, 2000}, {"oz", 100, 2, 705}}}},
  {"/swatch/massStitches", Group::stretch, whole(50, 20000)},

  {"/swatch/readings/*/stitches", Group::readings, counted(1, 400)},
  {"/swatch/readings/*/widthMm", Group::readings, length(10, 500)},
  {"/swatch/readings/*/rounds", Group::readings, counted(1, 600)},
  {"/swatch/readings/*/heightMm", Group::readings, length(10, 500)},
};
// clang-format on

int word_count(std::string_view words) {
  int count = 1;
  for (const char c : words) count += c == '|' ? 1 : 0;
  return count;
}

// How many values a unit has.
int size_of(const LinkRow& row, int unit) {
  if (!row.words.empty()) return word_count(row.words);
  const LinkGrid& grid = row.grids.at(static_cast<std::size_t>(unit));
  return grid.last - grid.first + 1;
}

int first_of(const LinkRow& row, int unit) {
  return row.words.empty() ? row.grids.at(static_cast<std::size_t>(unit)).first : 0;
}

}  // namespace

std::span<const LinkRow> link_rows_1() {
  return kRows;
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
  return code + value.place - first_of(row, value.unit);
}

LinkValue value_of(const LinkRow& row, int code) {
  const int units = unit_count(row);
  if (code == 0) return {};
  if (code <= units) return {LinkValue::What::emptied, code - 1, 0};
  int place = code - 1 - units;
  int unit = 0;
  while (place >= size_of(row, unit)) place -= size_of(row, unit++);
  return {LinkValue::What::said, unit, place + first_of(row, unit)};
}

}  // namespace twinround

#include "random_sheet.h"

#include <algorithm>
#include <iterator>
#include <string>

#include "fields.h"

namespace twinround {
namespace {

double share(std::mt19937& random) {
  return static_cast<double>(random()) / 4294967296.0;
}

int place_between(std::mt19937& random, int first, int last) {
  const double way = share(random);
  if (way < 0.03) return first;
  if (way > 0.97) return last;
  return first + static_cast<int>(share(random) * (last - first + 1));
}

// A foot and a swatch such as people have: base units.
struct Likely {
  const char* pointer;
  double min, max;
};
constexpr Likely kLikely[] = {{"/foot/lengthMm", 150, 300},
                              {"/foot/ballGirthMm", 150, 280},
                              {"/foot/heelAnkleGirthMm", 250, 330},
                              {"/foot/ankleGirthMm", 170, 240},
                              {"/foot/calfGirthMm", 250, 400},
                              {"/legHeightMm", 130, 400},
                              {"/cuffMm", 10, 60},
                              {"/rib/knit", 1, 3},
                              {"/rib/purl", 1, 3},
                              {"/girthEase", -0.2, 0},
                              {"/lengthEase", -0.1, 0},
                              {"/toe/share", 0.15, 0.35},
                              {"/toe/tipShare", 0.3, 0.6},
                              {"/swatch/readings/*/stitches", 16, 26},
                              {"/swatch/readings/*/widthMm", 90, 110},
                              {"/swatch/readings/*/rounds", 22, 40},
                              {"/swatch/readings/*/heightMm", 90, 110},
                              {"/foot/shoe/size", 34, 46},
                              {"/swatch/stretchedWidthMm", 160, 220}};

bool is_unlikely(const SheetField& field) {
  std::string pointer = field.pointer;
  if (pointer.starts_with("/swatch/readings/"))
    pointer = "/swatch/readings/*" + pointer.substr(pointer.rfind('/'));
  const auto* row = std::find_if(std::begin(kLikely), std::end(kLikely),
                                 [&](const Likely& one) { return one.pointer == pointer; });
  return row != std::end(kLikely) && (in_base(field) < row->min || in_base(field) > row->max);
}

SheetField random_field(std::mt19937& random, const LinkRow& row, int item, bool is_likely) {
  const int unit = static_cast<int>(random() % static_cast<unsigned>(unit_count(row)));
  if (share(random) < (is_likely ? 0.003 : 0.03)) {
    return field_of(row, item, {LinkValue::What::emptied, unit, 0});
  }
  const LinkGrid& grid = row.grids.at(static_cast<std::size_t>(unit));
  for (;;) {
    int place = !is_choice(row) ? place_between(random, grid.first, grid.last)
                                : static_cast<int>(random() % 5);
    if (is_choice(row) && word_at(row.words, place).empty()) continue;
    // Mostly whole numbers, halves and eighths.
    const int coarse = grid.parts % 8 == 0 ? grid.parts / 8 : grid.parts;
    if (!is_choice(row) && share(random) < 0.6)
      place = std::clamp<int>(place / coarse * coarse, grid.first, grid.last);
    SheetField field = field_of(row, item, {LinkValue::What::said, unit, place});
    if (is_likely && field.has_value && is_unlikely(field)) continue;
    return field;
  }
}

}  // namespace

SheetFields random_fields(std::mt19937& random, bool is_likely) {
  const double said = is_likely ? 0.99 : share(random);
  const int most_readings = share(random) < 0.2 ? kLinkReadings : 3;
  const int readings = 1 + static_cast<int>(random() % static_cast<unsigned>(most_readings));
  SheetFields fields;
  for (const LinkRow& row : link_rows_1()) {
    const bool is_rare = row.group == LinkGroup::stretch || row.group == LinkGroup::count;
    const int items = row.group == LinkGroup::readings ? readings : 1;
    for (int item = 0; item < items; ++item) {
      if (share(random) > (is_rare ? said / 8 : said)) continue;
      fields.push_back(random_field(random, row, item, is_likely));
    }
  }
  // In the order of nobody: a sheet's fields have none.
  for (std::size_t i = fields.size(); i > 1; --i) std::swap(fields[i - 1], fields[random() % i]);
  return fields;
}

}  // namespace twinround

// A link is frozen with its version, the table of fields is not: these hold the newest link to the
// table of today. One that fails asks for a new version of the link, never for another row of an
// old one (DEVELOPERS.md says how).
#include "link_rows.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <set>
#include <string>

#include "fields.h"
#include "link_fields.h"
#include "link_seal.h"
#include "link_sheet.h"

namespace twinround {
namespace {

const LinkRow* row_of(std::string_view pointer) {
  for (const LinkRow& row : link_rows_1()) {
    if (row.pointer == pointer) return &row;
  }
  return nullptr;
}

double in_base(double value, std::string_view unit) {
  static const std::map<std::string_view, double> kFactors = {
      {"cm", 10}, {"in", 25.4}, {"yd", 0.9144}, {"oz", 28.349523125}, {"%", 0.01}};
  const auto found = kFactors.find(unit);
  return found == kFactors.end() ? value : value * found->second;
}

TEST(LinkRows, EveryFieldOfTheTableIsInTheLink) {
  for (const Field& field : request_fields()) {
    const bool is_leaf = field.kind != Kind::object && field.kind != Kind::list;
    if (!is_leaf || field.pointer == "/version") continue;
    EXPECT_NE(row_of(field.pointer), nullptr) << field.pointer;
  }
}

TEST(LinkRows, EveryRowIsAFieldOfTheTableOrAWayToBeAsked) {
  std::set<std::string_view> seen;
  for (const LinkRow& row : link_rows_1()) {
    EXPECT_EQ(request_field(row.pointer).pointer, row.pointer);
    EXPECT_TRUE(seen.insert(row.pointer).second) << row.pointer;
    const Kind kind = request_field(row.pointer).kind;
    EXPECT_EQ(is_choice(row), kind != Kind::number && kind != Kind::whole) << row.pointer;
  }
}

TEST(LinkRows, AChoiceHasTheWordsOfTheTable) {
  for (const LinkRow& row : link_rows_1()) {
    const Field& field = request_field(row.pointer);
    if (field.kind == Kind::word) {
      EXPECT_EQ(row.words, field.words);
    }
    if (field.kind == Kind::yes_no) {
      EXPECT_EQ(row.words, "true | false");
    }
  }
}

// Every step that the form offers can be said exactly, and the ends of the range as nearly as the
// unit has steps.
TEST(LinkRows, ANumberIsSaidAsFinelyAndAsFarAsTheTableSays) {
  int numbers = 0;
  for (const LinkRow& row : link_rows_1()) {
    if (is_choice(row)) continue;
    const Field& field = request_field(row.pointer);
    for (int place = 0; place < unit_count(row); ++place) {
      const LinkGrid& grid = row.grids.at(static_cast<std::size_t>(place));
      const std::string_view unit = word_at(row.words, place);
      ++numbers;
      const double step = in_base(1.0 / grid.parts, unit);
      const double first = in_base(static_cast<double>(grid.first) / grid.parts, unit);
      const double last = in_base(static_cast<double>(grid.last) / grid.parts, unit);
      EXPECT_LE(step, field.step + 1e-12 + (unit == "oz" ? 0.2 : 0)) << row.pointer << unit;
      EXPECT_GE(first, field.min - 1e-9) << row.pointer << unit;
      EXPECT_LE(last, field.max + 1e-9) << row.pointer << unit;
      EXPECT_LT(first - step, field.min - 1e-9) << row.pointer << unit;
      EXPECT_GT(last + step, field.max + 1e-9) << row.pointer << unit;
      const bool is_own_unit = unit != "in" && unit != "oz" && unit != "yd";
      if (!is_own_unit) continue;
      const double parts = field.step / step;
      EXPECT_NEAR(parts, std::floor(parts + 0.5), 1e-9) << row.pointer;
      EXPECT_NEAR(first, field.min, 1e-9) << row.pointer;
      EXPECT_NEAR(last, field.max, 1e-9) << row.pointer;
    }
  }
  EXPECT_GT(numbers, 40);
}

TEST(LinkRows, LengthsAreInCentimetresAndInches) {
  for (const LinkRow& row : link_rows_1()) {
    const bool is_length = row.pointer.ends_with("Mm") && row.pointer != "/swatch/needleMm";
    EXPECT_EQ(is_length, row.words == "cm | in") << row.pointer;
  }
}

TEST(LinkRows, AGroupStandsTogetherAndTheReadingsLast) {
  std::set<LinkGroup> done;
  LinkGroup now = link_rows_1().front().group;
  for (const LinkRow& row : link_rows_1()) {
    if (row.group == now) continue;
    EXPECT_TRUE(done.insert(now).second);
    now = row.group;
  }
  EXPECT_FALSE(done.count(now));
  EXPECT_EQ(now, LinkGroup::readings);
  EXPECT_EQ(request_field("/swatch/readings").max, kLinkReadings);
}

TEST(LinkRows, EveryValueHasItsNumberAndBack) {
  for (const LinkRow& row : link_rows_1()) {
    const int count = value_count(row);
    std::set<std::string> seen;
    for (int code = 0; code < count; ++code) {
      const LinkValue value = value_of(row, code);
      ASSERT_EQ(code_of(row, value), code) << row.pointer;
      seen.insert(std::to_string(static_cast<int>(value.what)) + " " + std::to_string(value.unit) +
                  " " + std::to_string(value.place));
    }
    EXPECT_EQ(static_cast<int>(seen.size()), count) << row.pointer;
    EXPECT_LT(count, 1 << 24);
    EXPECT_EQ(value_of(row, 0).what, LinkValue::What::not_said);
    EXPECT_EQ(value_of(row, count - 1).what, LinkValue::What::said);
  }
}

TEST(LinkRows, TheRequestHasRoomForThemAll) {
  const auto most = link_rows_1().size() + 11 * 4;
  EXPECT_LE(most, static_cast<std::size_t>(kMostFields));
  EXPECT_EQ(empty_sheet().codes.size(), most);
}

TEST(LinkRows, TheEchoHasRoomForWhatAPlanAllows) {
  EXPECT_EQ(request_field("/stitchCount").min, kEchoLeastStitches);
  EXPECT_EQ(request_field("/stitchCount").max, kEchoMostStitches);
}

}  // namespace
}  // namespace twinround

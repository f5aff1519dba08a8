// Both ends of every range of the contract, written out here once more and by hand.
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include "fields.h"
#include "json_writer.h"
#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

struct Range {
  const char* pointer;
  double min;
  double max;
};

const std::vector<Range> kRanges = {
    {"/swatch/needleMm", 1, 25},
    {"/swatch/readings/0/stitches", 1, 400},
    {"/swatch/readings/0/widthMm", 10, 500},
    {"/swatch/readings/0/rounds", 1, 600},
    {"/swatch/readings/0/heightMm", 10, 500},
    {"/swatch/stretchedWidthMm", 10, 1500},
    {"/swatch/massG", 0.5, 200},
    {"/swatch/massStitches", 50, 20000},
    {"/yarn/category", 0, 7},
    {"/yarn/ballG", 5, 2000},
    {"/yarn/ballM", 5, 5000},
    {"/yarn/substitute/ballG", 5, 2000},
    {"/yarn/substitute/ballM", 5, 5000},
    {"/foot/lengthMm", 80, 400},
    {"/foot/ballGirthMm", 80, 400},
    {"/foot/heelAnkleGirthMm", 80, 600},
    {"/foot/ankleGirthMm", 80, 600},
    {"/foot/calfGirthMm", 80, 700},
    {"/legHeightMm", 40, 700},
    {"/cuffMm", 0, 300},
    {"/rib/knit", 1, 12},
    {"/rib/purl", 1, 12},
    {"/rib/roundsPerShift", 0, 40},
    {"/girthEase", -0.40, 0.20},
    {"/lengthEase", -0.20, 0.20},
    {"/toe/share", 0.05, 0.50},
    {"/toe/tipShare", 0.10, 1},
    {"/stitchCount", 8, 400},
    {"/pace/stitchesPerMinute", 1, 200},
    {"/yarnMargin", 0, 1},
};

double just_below(double x) {
  return std::nextafter(x, -std::numeric_limits<double>::infinity());
}
double just_above(double x) {
  return std::nextafter(x, std::numeric_limits<double>::infinity());
}

TEST(Ranges, BothEndsAreAllowed) {
  for (const Range& range : kRanges) {
    for (const double end : {range.min, range.max}) {
      EXPECT_EQ(faults(full_request().with(range.pointer, json_number(end))), Faults{})
          << range.pointer << " = " << end;
    }
  }
}

TEST(Ranges, AHairOutsideIsRefusedAtItsPointerWithTheRange) {
  for (const Range& range : kRanges) {
    for (const double outside : {just_below(range.min), range.min - 1, just_above(range.max),
                                 range.max + 1, 1e300, -1e300}) {
      const std::string text = full_request().with(range.pointer, json_number(outside)).text();
      const std::vector<Problem> problems = problems_of(text);
      ASSERT_EQ(problems.size(), 1U) << range.pointer << " = " << outside;
      EXPECT_EQ(problems[0].field, range.pointer);
      EXPECT_EQ(problems[0].code, "out_of_range");
      ASSERT_EQ(problems[0].numbers.size(), 2U);
      EXPECT_EQ(problems[0].numbers[0].name, "min");
      EXPECT_EQ(problems[0].numbers[0].value, range.min);
      EXPECT_EQ(problems[0].numbers[1].name, "max");
      EXPECT_EQ(problems[0].numbers[1].value, range.max);
      EXPECT_FALSE(problems[0].message.empty());
    }
  }
}

TEST(Ranges, EveryNumberOfTheTableIsInThisOne) {
  for (const Field& field : request_fields()) {
    const bool number = field.kind == Kind::number || field.kind == Kind::whole;
    if (!number || field.pointer == "/version" || field.pointer == "/foot/shoe/size") continue;
    int found = 0;
    for (const Range& range : kRanges) {
      if (range.pointer != first_item(field.pointer)) continue;
      ++found;
      EXPECT_EQ(field.min, range.min) << range.pointer;
      EXPECT_EQ(field.max, range.max) << range.pointer;
    }
    EXPECT_EQ(found, 1) << field.pointer;
  }
}

RequestText shoe(const char* scale, double size) {
  return shoe_request()
      .with("/foot/shoe/scale", "\"" + std::string(scale) + "\"")
      .with("/foot/shoe/size", json_number(size));
}

TEST(Ranges, AShoeSizeIsHeldToItsOwnScale) {
  const Faults refused = {"/foot/shoe/size out_of_range"};
  for (const char* scale : {"eu", "us-men", "us-women", "uk"}) {
    for (const double size : {0.0, 60.0}) EXPECT_EQ(faults(shoe(scale, size)), Faults{}) << scale;
    for (const double size : {-0.5, 60.5, 246.0}) EXPECT_EQ(faults(shoe(scale, size)), refused);
  }
  for (const double size : {80.0, 400.0}) EXPECT_EQ(faults(shoe("mondopoint", size)), Faults{});
  for (const double size : {39.0, 79.5, 400.5}) {
    EXPECT_EQ(faults(shoe("mondopoint", size)), refused);
  }
}

TEST(Ranges, AShoeSizeOfNoKnownScaleIsHeldToAllOfThem) {
  EXPECT_EQ(faults(shoe("paris", 246)), Faults{"/foot/shoe/scale unknown_word"});
  EXPECT_EQ(faults(shoe("paris", 401)),
            (Faults{"/foot/shoe/scale unknown_word", "/foot/shoe/size out_of_range"}));
  EXPECT_EQ(faults(shoe("eu", 246).without("/foot/shoe/scale")),
            Faults{"/foot/shoe/scale required"});
}

TEST(Ranges, OneToTwelveReadings) {
  RequestText request = full_request();
  for (int count = 2; count <= 12; ++count) {
    const std::string reading = "/swatch/readings/" + std::to_string(count - 1);
    request = request.with(reading + "/stitches", "20").with(reading + "/widthMm", "101.6");
    EXPECT_EQ(faults(request), Faults{}) << count;
  }
  request = request.with("/swatch/readings/12/stitches", "20");
  EXPECT_EQ(faults(request), Faults{"/swatch/readings too_many_items"});
  EXPECT_EQ(faults(full_request().without("/swatch/readings").with("/swatch/readings", "[]")),
            Faults{"/swatch/readings required"});
}

TEST(Ranges, ReadingsPastTheTwelfthAreNotLookedAt) {
  std::string readings = "[{\"stitches\":20,\"widthMm\":101.6}";
  for (int more = 0; more < 5000; ++more) readings += ",{\"x\":[]}";
  const std::string text =
      full_request().without("/swatch/readings").with("/swatch/readings", readings + "]").text();
  const std::vector<Problem> problems = problems_of(text);
  // Of readings 1 to 11: stitches and width missing, x unknown.
  ASSERT_EQ(problems.size(), 1U + 11 * 3);
  EXPECT_EQ(problems[0].code, "too_many_items");
  EXPECT_EQ(problems[0].numbers.at(0).value, 12);
  EXPECT_EQ(problems.back().field, "/swatch/readings/11/widthMm");
}

}  // namespace
}  // namespace twinround

#include "fields.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <set>
#include <string>

#include "request_reader.h"
#include "request_text.h"

namespace twinround {
namespace {

TEST(Fields, EachStandsOnceAndAfterTheObjectAroundIt) {
  std::set<std::string_view> seen;
  for (const Field& field : request_fields()) {
    if (!field.pointer.empty()) {
      EXPECT_TRUE(seen.count(parent_pointer(field.pointer))) << field.pointer;
    }
    EXPECT_TRUE(seen.insert(field.pointer).second) << field.pointer;
  }
}

TEST(Fields, EveryNumberHasARangeAndAStepAndEveryWordItsChoices) {
  for (const Field& field : request_fields()) {
    const bool number = field.kind == Kind::number || field.kind == Kind::whole;
    EXPECT_EQ(field.step > 0, number) << field.pointer;
    EXPECT_EQ(!word_at(field.words, 1).empty(), field.kind == Kind::word) << field.pointer;
    EXPECT_LE(field.min, field.max) << field.pointer;
    EXPECT_FALSE(field.about.empty()) << field.pointer;
    EXPECT_NE(field.kind, Kind::text) << field.pointer;
    EXPECT_NE(field.kind, Kind::named) << field.pointer;
  }
}

TEST(Fields, EveryDefaultIsItselfAllowed) {
  int defaults = 0;
  for (const Field& field : request_fields()) {
    if (field.standard.empty()) continue;
    ++defaults;
    EXPECT_EQ(field.need, Need::optional) << field.pointer;
    const std::string text(field.standard);
    if (field.kind == Kind::word) {
      EXPECT_GE(word_place(field.words, text), 0) << field.pointer;
    } else if (field.kind == Kind::yes_no) {
      EXPECT_TRUE(text == "true" || text == "false") << field.pointer;
    } else {
      const double value = std::strtod(text.c_str(), nullptr);
      EXPECT_GE(value, field.min) << field.pointer;
      EXPECT_LE(value, field.max) << field.pointer;
    }
  }
  EXPECT_EQ(defaults, 14);
}

TEST(Fields, PartnersPointToEachOther) {
  int partnered = 0;
  for (const Field& field : request_fields()) {
    if (field.partner.empty()) continue;
    ++partnered;
    const std::string around(parent_pointer(field.pointer));
    const Field& partner = request_field(around + "/" + std::string(field.partner));
    EXPECT_EQ(partner.partner, field_name(field.pointer)) << field.pointer;
  }
  EXPECT_EQ(partnered, 6);
}

// The reader and the checks walk one list of readings: the rows of its items stand together.
TEST(Fields, OnlyTheReadingsAreInAList) {
  for (const Field& field : request_fields()) {
    EXPECT_EQ(in_list(field), field.pointer.starts_with("/swatch/readings/*")) << field.pointer;
  }
}

TEST(Fields, EveryLeafButTheVersionIsWrittenIntoTheRequest) {
  for (const Field& field : request_fields()) {
    const bool leaf = field.kind != Kind::object && field.kind != Kind::list;
    if (!leaf || field.pointer == "/version") continue;
    EXPECT_NE(field.set, nullptr) << field.pointer;
  }
}

TEST(Fields, WordsAreFoundByPlaceAndByName) {
  EXPECT_EQ(word_place("left | right | mirrored", "left"), 0);
  EXPECT_EQ(word_place("left | right | mirrored", "mirrored"), 2);
  EXPECT_EQ(word_place("left | right | mirrored", "mirror"), -1);
  EXPECT_EQ(word_place("left | right | mirrored", "left | right"), -1);
  EXPECT_EQ(word_place("left | right | mirrored", ""), -1);
  EXPECT_EQ(word_at("left | right | mirrored", 1), "right");
  EXPECT_EQ(word_at("left | right | mirrored", 3), "");
}

TEST(Fields, APointersItemIsFilledIn) {
  EXPECT_EQ(pointer_of(request_field("/swatch/readings/*/rounds"), 11),
            "/swatch/readings/11/rounds");
  EXPECT_EQ(pointer_of(request_field("/foot"), 0), "/foot");
}

// Each value different from every default and from its neighbours, so that a setter that writes
// elsewhere shows.
TEST(Fields, EachReachesItsOwnPlaceInTheRequest) {
  const auto read = read_request(full_request()
                                     .with("/swatch/fabric", "\"rib\"")
                                     .with("/swatch/washed", "false")
                                     .with("/swatch/needleMm", "3.25")
                                     .with("/swatch/readings/1/stitches", "21.25")
                                     .with("/swatch/readings/1/widthMm", "99")
                                     .with("/swatch/readings/1/rounds", "29.5")
                                     .with("/swatch/readings/1/heightMm", "98")
                                     .with("/yarn/category", "3")
                                     .with("/yarn/ballG", "50")
                                     .with("/yarn/ballM", "125")
                                     .with("/rib/knit", "3")
                                     .with("/rib/purl", "1")
                                     .with("/rib/roundsPerShift", "5")
                                     .with("/rib/lean", "\"mirrored\"")
                                     .with("/girthEase", "-0.12")
                                     .with("/lengthEase", "-0.03")
                                     .with("/toe/share", "0.3")
                                     .with("/toe/tipShare", "0.5")
                                     .with("/toe/shape", "\"even\"")
                                     .with("/cuffMm", "31")
                                     .with("/pace/stitchesPerMinute", "22")
                                     .with("/yarnMargin", "0.2")
                                     .text());
  ASSERT_TRUE(read.ok());
  const PlanRequest& r = read.value();
  EXPECT_EQ(r.swatch.fabric, Fabric::rib);
  EXPECT_FALSE(r.swatch.washed);
  EXPECT_EQ(r.swatch.needle->mm(), 3.25);
  ASSERT_EQ(r.swatch.readings.size(), 2U);
  EXPECT_EQ(r.swatch.readings[0].stitches, 20);
  EXPECT_EQ(r.swatch.readings[0].width.mm(), 101.6);
  EXPECT_EQ(*r.swatch.readings[0].rounds, 28);
  EXPECT_EQ(r.swatch.readings[1].stitches, 21.25);
  EXPECT_EQ(r.swatch.readings[1].width.mm(), 99);
  EXPECT_EQ(*r.swatch.readings[1].rounds, 29.5);
  EXPECT_EQ(r.swatch.readings[1].height->mm(), 98);
  EXPECT_EQ(r.swatch.stretched_width->mm(), 190);
  EXPECT_EQ(r.swatch.mass->g(), 5.6);
  EXPECT_EQ(*r.swatch.mass_stitches, 560);
  EXPECT_EQ(*r.yarn.category, 3);
  EXPECT_EQ(r.yarn.ball_mass->g(), 50);
  EXPECT_EQ(r.yarn.ball_length->m(), 125);
  EXPECT_EQ(r.foot.length->mm(), 246);
  EXPECT_EQ(r.foot.ball_girth->mm(), 228);
  EXPECT_EQ(r.foot.heel_ankle_girth->mm(), 310);
  EXPECT_EQ(r.foot.ankle_girth->mm(), 216);
  EXPECT_EQ(r.foot.calf_girth->mm(), 373);
  EXPECT_EQ(r.leg_height.mm(), 200);
  EXPECT_EQ(r.cuff.mm(), 31);
  EXPECT_EQ(r.rib.knit, 3);
  EXPECT_EQ(r.rib.purl, 1);
  EXPECT_EQ(r.rib.rounds_per_shift, 5);
  EXPECT_EQ(r.rib.lean, Lean::mirrored);
  EXPECT_EQ(r.girth_ease, -0.12);
  EXPECT_EQ(r.length_ease, -0.03);
  EXPECT_EQ(r.toe_share, 0.3);
  EXPECT_EQ(r.tip_share, 0.5);
  EXPECT_EQ(r.toe_shape, ToeShape::even);
  EXPECT_EQ(*r.stitch_count, 44);
  EXPECT_EQ(r.stitches_per_minute, 22);
  EXPECT_EQ(r.yarn_margin, 0.2);
}

TEST(Fields, AShoeReachesItsPlaceWhateverTheOrder) {
  const RequestText size_first = least_request()
                                     .without("/foot")
                                     .with("/foot/body", "\"child\"")
                                     .with("/foot/shoe/size", "11.5")
                                     .with("/foot/shoe/scale", "\"uk\"");
  const auto read = read_request(size_first.text());
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(read.value().foot.shoe->scale, ShoeScale::uk);
  EXPECT_EQ(read.value().foot.shoe->size, 11.5);
  EXPECT_EQ(*read.value().foot.body, Body::child);
  EXPECT_FALSE(read.value().foot.length);
}

TEST(Fields, EveryWordMeansWhatItSays) {
  const auto scale = [](const char* word) {
    return read_request(
        shoe_request().with("/foot/shoe/scale", word).with("/foot/shoe/size", "60").text());
  };
  const auto mondopoint = read_request(shoe_request()
                                           .with("/foot/shoe/scale", "\"mondopoint\"")
                                           .with("/foot/shoe/size", "245")
                                           .text());
  EXPECT_EQ(mondopoint.value().foot.shoe->scale, ShoeScale::mondopoint);
  EXPECT_EQ(scale("\"eu\"").value().foot.shoe->scale, ShoeScale::eu);
  EXPECT_EQ(scale("\"us-men\"").value().foot.shoe->scale, ShoeScale::us_men);
  EXPECT_EQ(scale("\"us-women\"").value().foot.shoe->scale, ShoeScale::us_women);
  EXPECT_EQ(scale("\"uk\"").value().foot.shoe->scale, ShoeScale::uk);
  const auto with = [](const char* pointer, const char* word) {
    return read_request(shoe_request().with(pointer, word).text()).value();
  };
  EXPECT_EQ(*with("/foot/body", "\"woman\"").foot.body, Body::woman);
  EXPECT_EQ(*with("/foot/body", "\"man\"").foot.body, Body::man);
  EXPECT_EQ(with("/rib/lean", "\"left\"").rib.lean, Lean::left);
  EXPECT_EQ(with("/rib/lean", "\"right\"").rib.lean, Lean::right);
  EXPECT_EQ(with("/toe/shape", "\"round\"").toe_shape, ToeShape::round);
}

}  // namespace
}  // namespace twinround

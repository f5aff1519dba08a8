#include "json_reader.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

std::string broken(const std::string& text) {
  const ReadText read = read_json(text, request_fields());
  return read.broken ? read.broken->field + " " + read.broken->code : "";
}

TEST(JsonReader, NotesWhatStandsAtEachField) {
  const ReadText read = read_json(
      R"( {"version":1,"swatch":{"washed":false,"readings":[{"stitches":20.5},{"rounds":null}]},"rib":{"lean":"left"}} )",
      request_fields());
  ASSERT_FALSE(read.broken);
  EXPECT_EQ(read.find("")->kind, JsonKind::object);
  EXPECT_EQ(read.find("/version")->number, 1);
  EXPECT_EQ(read.find("/swatch/washed")->kind, JsonKind::yes_no);
  EXPECT_EQ(read.find("/swatch/washed")->number, 0);
  EXPECT_EQ(read.find("/swatch/readings")->items, 2);
  EXPECT_EQ(read.find("/swatch/readings/*/stitches", 0)->number, 20.5);
  EXPECT_EQ(read.find("/swatch/readings/*/stitches", 1), nullptr);
  EXPECT_EQ(read.find("/swatch/readings/*/rounds", 1)->kind, JsonKind::null);
  EXPECT_EQ(read.find("/rib/lean")->text, "left");
  EXPECT_EQ(read.find("/cuffMm"), nullptr);
}

TEST(JsonReader, ReadsNumbersAsTheNearestDouble) {
  for (const auto& [literal, value] : {std::pair{"0.1", 0.1},
                                       {"1e-3", 0.001},
                                       {"-0", 0.0},
                                       {"18446744073709551615", 18446744073709551615.0},
                                       {"18446744073709551616", 18446744073709551616.0},
                                       {"-9223372036854775809", -9223372036854775809.0},
                                       {"1e-999", 0.0},
                                       {"1.7976931348623157e308", 1.7976931348623157e308}}) {
    const ReadText read = read_json("{\"cuffMm\":" + std::string(literal) + "}", request_fields());
    EXPECT_EQ(read.find("/cuffMm")->kind, JsonKind::number) << literal;
    EXPECT_EQ(read.find("/cuffMm")->number, value) << literal;
  }
}

TEST(JsonReader, AByteOrderMarkIsFine) {
  EXPECT_EQ(faults("\xEF\xBB\xBF" + full_request().text()), Faults{});
}

TEST(JsonReader, NamesRepeatedKeysOnceEachAndKeepsTheFirstValue) {
  const std::string text =
      R"({"version":1,"legHeightMm":200,"yarn":{"category":4,"category":99,"category":"x"},)"
      R"("foot":{"lengthMm":246,"ballGirthMm":228},"foot":{"lengthMm":1,"x":2},"foot":7})";
  EXPECT_EQ(faults(text), (Faults{"/yarn/category repeated_field", "/foot repeated_field"}));
}

TEST(JsonReader, AKeyRepeatedInAnotherReadingIsNoRepetition) {
  EXPECT_EQ(faults(full_request()
                       .with("/swatch/readings/1/stitches", "20")
                       .with("/swatch/readings/1/widthMm", "100")),
            Faults{});
  const std::string twice =
      R"({"readings":[{"stitches":20,"widthMm":100,"rounds":28,"heightMm":100},)"
      R"({"stitches":20,"stitches":20,"widthMm":100}]})";
  EXPECT_EQ(faults(least_request().with("/swatch", twice)),
            Faults{"/swatch/readings/1/stitches repeated_field"});
}

TEST(JsonReader, AKeyRepeatedUnderAnotherSpellingIsARepetition) {
  EXPECT_EQ(faults(R"({"version":1,"\u0076ersion":1})").front(), "/version repeated_field");
}

TEST(JsonReader, NamesUnknownFieldsByEscapedPointersAndLooksNoFurther) {
  const std::vector<std::pair<const char*, const char*>> keys = {{"a/b", "/a~1b"},
                                                                 {"a~b", "/a~0b"},
                                                                 {"~1", "/~01"},
                                                                 {"/", "/~1"},
                                                                 {"", "/"},
                                                                 {"*", "/*"},
                                                                 {"rib/knit", "/rib~1knit"},
                                                                 {"Version", "/Version"},
                                                                 {"\xC3\xA9", "/\xC3\xA9"}};
  for (const auto& [key, pointer] : keys) {
    const std::string value = R"({"x":[{"version":0}],"y":NaN})";
    const std::string rest = least_request().text().substr(1);
    EXPECT_EQ(faults("{\"" + std::string(key) + "\":" + value + "," + rest),
              Faults{std::string(pointer) + " unknown_field"});
  }
}

TEST(JsonReader, AnUnknownFieldMayStandAnywhere) {
  for (const char* around :
       {"/swatch", "/swatch/readings/0", "/yarn", "/foot", "/rib", "/toe", "/pace"}) {
    const std::string pointer = std::string(around) + "/nobody";
    EXPECT_EQ(faults(full_request().with(pointer, "1")), Faults{pointer + " unknown_field"});
  }
  // A step of a list in the table is no key.
  EXPECT_EQ(faults(full_request().with("/swatch/readings/0/*", "1")),
            Faults{"/swatch/readings/0/* unknown_field"});
  EXPECT_EQ(faults(shoe_request().with("/foot/shoe/colour", "1")),
            Faults{"/foot/shoe/colour unknown_field"});
}

TEST(JsonReader, SaysWhereATextBreaksOff) {
  const std::vector<std::pair<std::string, const char*>> texts = {
      {"", ""},
      {" \n\t", ""},
      {"{", ""},
      {"{\"version\"", "/version"},
      {"{\"version\":", "/version"},
      {"{\"version\":1", ""},
      {"{\"version\":1,", ""},
      {"{\"version\":1}}", ""},
      {"{\"version\":1} x", ""},
      {"{\"version\":01}", ""},
      {"{\"version\":+1}", "/version"},
      {"{\"version\":.5}", "/version"},
      {"{\"version\":1.}", "/version"},
      {"{\"version\":0x10}", ""},
      {"{\"version\":nan}", "/version"},
      {"{\"version\":+Infinity}", "/version"},
      {"{\"version\":NaNs}", "/version"},
      {"{\"version\":1e999x}", "/version"},
      {"{version:1}", ""},
      {"{'version':1}", ""},
      {"{\"version\":1,}", ""},
      {"{\"version\":1 /* one */}", ""},
      {"{\"foot\":{\"lengthMm\":2 46}}", "/foot"},
      {"{\"foot\":{\"lengthMm\":}}", "/foot/lengthMm"},
      {"{\"swatch\":{\"readings\":[{\"stitches\":20},{\"stitches\":tru}]}}",
       "/swatch/readings/1/stitches"},
      {"{\"swatch\":{\"readings\":[{}},", "/swatch/readings"},
      {"{\"rib\":{\"lean\":\"left}}", "/rib/lean"},
      {"{\"rib\":{\"lean\":\"le\nft\"}}", "/rib/lean"},
      {"{\"rib\":{\"lean\":\"\\x\"}}", "/rib/lean"},
      {"{\"a~/b\":{\"c\":?}}", "/a~0~1b/c"},
  };
  for (const auto& [text, pointer] : texts) {
    EXPECT_EQ(broken(text), std::string(pointer) + " bad_json") << text;
  }
}

TEST(JsonReader, RefusesTextThatIsNoUnicode) {
  for (const char* bytes : {"\xFF", "\xC3", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\x80",
                            "\\ud800", "\\udc00", "\\ud800\\ud800", "\\ud800x", "\\uD83D"}) {
    EXPECT_EQ(broken("{\"rib\":{\"lean\":\"" + std::string(bytes) + "\"}}"), "/rib/lean bad_json")
        << bytes;
    EXPECT_EQ(broken("{\"rib\":{\"" + std::string(bytes) + "\":1}}"), "/rib bad_json") << bytes;
  }
  EXPECT_EQ(broken(R"({"rib":{"lean":"\ud83d\ude00"}})"), "");
}

TEST(JsonReader, AZeroByteDoesNotEndTheText) {
  const std::string zero(1, '\0');
  EXPECT_EQ(broken("{\"version\":1}" + zero), " bad_json");
  EXPECT_EQ(broken("{\"version\":1}" + zero + "and more"), " bad_json");
  EXPECT_EQ(broken("{\"version\":" + zero + "1}"), "/version bad_json");
  EXPECT_EQ(broken("{\"ver" + zero + "sion\":1}"), " bad_json");
  EXPECT_EQ(broken(zero), " bad_json");
}

TEST(JsonReader, ReadsSixtyFourKibibytesAndNotAByteMore) {
  const std::string text = least_request().text();
  const std::string full = text + std::string(kMostBytes - text.size(), ' ');
  ASSERT_EQ(full.size(), 65536U);
  EXPECT_EQ(faults(full), Faults{});
  EXPECT_EQ(faults(full + " "), Faults{" too_large_text"});
  // Counted in bytes, not letters.
  const std::string letter = "\xC3\xA9";
  std::string wide = "{\"";
  while (wide.size() <= kMostBytes) wide += letter;
  EXPECT_EQ(faults(wide), Faults{" too_large_text"});
}

std::string nested(const std::string& open, const std::string& close, int depth) {
  std::string text;
  for (int i = 0; i < depth; ++i) text += open;
  text += "1";
  for (int i = 0; i < depth; ++i) text += close;
  return text;
}

TEST(JsonReader, ReadsSixteenDeepAndNoDeeper) {
  EXPECT_EQ(broken("{\"x\":" + nested("[", "]", 15) + "}"), "");
  EXPECT_EQ(broken("{\"x\":" + nested("[", "]", 16) + "}"),
            "/x/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0 too_deep");
  EXPECT_EQ(broken(nested("{\"a\":", "}", 16)), "");
  EXPECT_EQ(broken(nested("{\"a\":", "}", 17)), "/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a/a too_deep");
  EXPECT_EQ(read_json(nested("[", "]", 17), request_fields()).broken->numbers.at(0).value, 16);
}

TEST(JsonReader, ThirtyThousandOpenBracketsAreTooDeep) {
  const std::string sixteen = "/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0/0";
  EXPECT_EQ(faults(std::string(30000, '[')), Faults{sixteen + " too_deep"});
  std::string objects;
  while (objects.size() < 60000) objects += "{\"foot\":";
  std::string feet;
  for (int i = 0; i < 16; ++i) feet += "/foot";
  EXPECT_EQ(faults(objects), Faults{feet + " too_deep"});
  EXPECT_EQ(faults("{\"foot\":{\"lengthMm\":" + std::string(30000, '[')),
            Faults{"/foot/lengthMm" + sixteen.substr(0, 28) + " too_deep"});
}

TEST(JsonReader, WhatIsNoObjectIsRefusedAsAWhole) {
  for (const char* text :
       {"[]", "[1,2]", "[{\"version\":1}]", "null", "true", "1", "\"plan\"", "NaN", "1e999"}) {
    EXPECT_EQ(faults(text), Faults{" not_an_object"}) << text;
  }
}

}  // namespace
}  // namespace twinround

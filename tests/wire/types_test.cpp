// Every field against every kind of value that it is not.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "fields.h"
#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

// The request that has this field, and in which it can be changed alone.
RequestText request_with(std::string_view pointer) {
  const bool shoe = pointer.starts_with("/foot/shoe") || pointer == "/foot/body";
  return shoe ? shoe_request() : full_request();
}

Faults told_of(const Field& field, const std::string& literal) {
  const std::string pointer = first_item(field.pointer);
  return faults(request_with(field.pointer).without(pointer).with(pointer, literal));
}

Faults one(const Field& field, const char* code) {
  return {first_item(field.pointer) + " " + code};
}

// The text's own kind is a question of its own: not_an_object.
std::vector<Field> all_fields() {
  std::vector<Field> fields;
  for (const Field& field : request_fields()) {
    if (!field.pointer.empty()) fields.push_back(field);
  }
  return fields;
}

TEST(Types, AnotherKindOfValueIsRefusedAtItsPointer) {
  for (const Field& field : all_fields()) {
    std::vector<std::string> others = {"null"};
    if (field.kind != Kind::object) others.push_back("{}");
    if (field.kind != Kind::list) others.push_back("[]");
    if (field.kind != Kind::word) others.push_back("\"20\"");
    if (field.kind != Kind::yes_no) others.push_back("true");
    if (field.kind != Kind::number && field.kind != Kind::whole) others.push_back("20");
    for (const std::string& literal : others) {
      EXPECT_EQ(told_of(field, literal), one(field, "wrong_type")) << field.pointer << literal;
    }
  }
}

TEST(Types, WhatIsExpectedIsTold) {
  const auto expected = [](const char* pointer) {
    const auto problems =
        problems_of(request_with(pointer).without(pointer).with(pointer, "null").text());
    return problems.at(0).words.at(0).name + " " + problems.at(0).words.at(0).value;
  };
  EXPECT_EQ(expected("/foot"), "expected object");
  EXPECT_EQ(expected("/swatch/readings"), "expected list");
  EXPECT_EQ(expected("/cuffMm"), "expected number");
  EXPECT_EQ(expected("/rib/knit"), "expected whole number");
  EXPECT_EQ(expected("/swatch/washed"), "expected true or false");
  EXPECT_EQ(expected("/rib/lean"), "expected word");
}

TEST(Types, NoValueAtAllIsNamedAtItsOwnFieldAndTheRestStillRead) {
  for (const Field& field : all_fields()) {
    EXPECT_EQ(told_of(field, "NaN"), one(field, "not_finite")) << field.pointer;
    EXPECT_EQ(told_of(field, "Infinity"), one(field, "not_finite")) << field.pointer;
    EXPECT_EQ(told_of(field, "-Infinity"), one(field, "not_finite")) << field.pointer;
    EXPECT_EQ(told_of(field, "1e999"), one(field, "number_too_large")) << field.pointer;
    EXPECT_EQ(told_of(field, "-1e999"), one(field, "number_too_large")) << field.pointer;
  }
}

TEST(Types, ManyOddNumbersAreEachNamed) {
  const RequestText request = full_request()
                                  .with("/swatch/readings/0/stitches", "NaN")
                                  .with("/swatch/massG", "null")
                                  .with("/foot/lengthMm", "1e400")
                                  .with("/foot/ballGirthMm", "-Infinity")
                                  .with("/legHeightMm", std::string(400, '9'))
                                  .with("/yarnMargin", "null");
  EXPECT_EQ(faults(request),
            (Faults{"/swatch/readings/0/stitches not_finite", "/swatch/massG wrong_type",
                    "/foot/lengthMm number_too_large", "/foot/ballGirthMm not_finite",
                    "/legHeightMm number_too_large", "/yarnMargin wrong_type"}));
}

TEST(Types, AWholeNumberMayBeWrittenWithAPointOrAnExponent) {
  for (const char* literal : {"44", "44.0", "44.000", "4.4e1", "4.4E+1", "440e-1", "0.44e2"}) {
    EXPECT_EQ(faults(full_request().with("/stitchCount", literal)), Faults{}) << literal;
  }
  for (const char* literal : {"44.5", "44.0000001", "43.9999999", "4.45e1"}) {
    EXPECT_EQ(faults(full_request().with("/stitchCount", literal)),
              Faults{"/stitchCount not_whole"})
        << literal;
  }
  for (const char* literal : {"400.5", "7.5", "1e300"}) {
    EXPECT_EQ(faults(full_request().with("/stitchCount", literal)),
              Faults{"/stitchCount out_of_range"})
        << literal;
  }
}

TEST(Types, EveryWholeNumberRefusesAHalf) {
  for (const Field& field : all_fields()) {
    if (field.kind != Kind::whole || field.pointer == "/version") continue;
    EXPECT_EQ(told_of(field, "2.5"),
              one(field, field.pointer == "/stitchCount" ? "out_of_range" : "not_whole"));
  }
}

TEST(Types, NumbersOffTheStepAreAccepted) {
  EXPECT_EQ(faults(full_request().with("/foot/lengthMm", "246.123456")), Faults{});
  EXPECT_EQ(faults(full_request().with("/swatch/readings/0/stitches", "20.1")), Faults{});
}

TEST(Types, AWordNotOnTheListIsRefusedWithTheList) {
  for (const Field& field : all_fields()) {
    if (field.kind != Kind::word) continue;
    for (const char* word : {"\"sideways\"", "\"\"", "\"Left\"", "\"left \"", "\"left | right\""}) {
      EXPECT_EQ(told_of(field, word), one(field, "unknown_word")) << field.pointer << word;
    }
    const std::string pointer = first_item(field.pointer);
    const auto problems = problems_of(request_with(pointer).with(pointer, "\"x\"").text());
    EXPECT_EQ(problems.at(0).words.at(0).name, "allowed");
    EXPECT_EQ(problems.at(0).words.at(0).value, field.words);
  }
}

TEST(Types, AWordMayBeWrittenWithEscapes) {
  EXPECT_EQ(faults(full_request().with("/rib/lean", R"("\u006ceft")")), Faults{});
}

TEST(Types, EveryProblemHasASentence) {
  for (const Field& field : all_fields()) {
    for (const char* literal : {"null", "NaN", "1e999", "1e300", "\"x\""}) {
      const std::string pointer = first_item(field.pointer);
      const std::string text =
          request_with(field.pointer).without(pointer).with(pointer, literal).text();
      for (const Problem& problem : problems_of(text)) {
        if (problem.code == "newer_version") continue;
        EXPECT_TRUE(problem.message.starts_with(field.about)) << problem.message;
        EXPECT_TRUE(problem.message.ends_with(".")) << problem.message;
      }
    }
  }
}

}  // namespace
}  // namespace twinround

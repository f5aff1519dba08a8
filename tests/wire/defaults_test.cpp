// Left out is the same as the default, to the byte.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "answer.h"
#include "fields.h"
#include "request_text.h"

namespace twinround {
namespace {

struct Default {
  const char* pointer;
  const char* literal;
  const char* another;  // which makes a difference
};

// As stated in the contract, written out here once more.
const std::vector<Default> kDefaults = {
    {"/swatch/fabric", "\"stockinette\"", "\"rib\""},
    {"/swatch/washed", "true", "false"},
    {"/cuffMm", "30", "40"},
    {"/rib/knit", "2", "3"},
    {"/rib/purl", "2", "3"},
    {"/rib/roundsPerShift", "4", "5"},
    {"/rib/lean", "\"left\"", "\"right\""},
    {"/girthEase", "-0.10", "-0.3"},
    {"/lengthEase", "-0.04", "0"},
    {"/toe/share", "0.25", "0.3"},
    {"/toe/tipShare", "0.40", "0.6"},
    {"/toe/shape", "\"round\"", "\"even\""},
    {"/pace/stitchesPerMinute", "15", "16"},
    {"/yarnMargin", "0.10", "0.2"},
};

RequestText advised_request() {
  return full_request()
      .without("/stitchCount")
      .without("/swatch/massG")
      .without("/swatch/massStitches");
}

std::string plan_of(const RequestText& request) {
  return answer("plan", request.text());
}

TEST(Defaults, LeftOutIsTheStatedDefault) {
  for (const Default& one : kDefaults) {
    const RequestText without = advised_request().without(one.pointer);
    const std::string reply = plan_of(without);
    ASSERT_TRUE(reply.starts_with(R"({"ok":true)")) << reply;
    EXPECT_EQ(reply, plan_of(without.with(one.pointer, one.literal))) << one.pointer;
    EXPECT_NE(reply, plan_of(without.with(one.pointer, one.another))) << one.pointer;
  }
}

TEST(Defaults, AllLeftOutTogetherAreAllTheDefaults) {
  RequestText bare = advised_request();
  for (const Default& one : kDefaults) bare = bare.without(one.pointer);
  RequestText told = bare;
  for (const Default& one : kDefaults) told = told.with(one.pointer, one.literal);
  EXPECT_NE(bare.text(), told.text());
  EXPECT_EQ(plan_of(bare), plan_of(told));
}

TEST(Defaults, TheTableStatesTheSameOnes) {
  std::size_t stated = 0;
  for (const Field& field : request_fields()) {
    if (field.standard.empty()) continue;
    ++stated;
    const std::string literal = field.kind == Kind::word ? "\"" + std::string(field.standard) + "\""
                                                         : std::string(field.standard);
    const RequestText without = advised_request().without(field.pointer);
    EXPECT_EQ(plan_of(without), plan_of(without.with(field.pointer, literal))) << field.pointer;
  }
  EXPECT_EQ(stated, kDefaults.size());
}

TEST(Defaults, AnEmptyObjectIsAllItsDefaults) {
  for (const char* around : {"/rib", "/toe", "/pace"}) {
    const RequestText without = advised_request().without(around);
    EXPECT_EQ(plan_of(without), plan_of(without.with(around, "{}"))) << around;
  }
  EXPECT_EQ(plan_of(advised_request().without("/yarn")),
            plan_of(advised_request().without("/yarn").with("/yarn", "{}")));
}

TEST(Defaults, TheOrderOfTheTextAndItsWhiteSpaceChangeNothing) {
  RequestText turned;
  for (const char* pointer :
       {"/legHeightMm", "/foot/ballGirthMm", "/yarn/category", "/version", "/foot/lengthMm"}) {
    for (const auto& [name, literal] : {std::pair{"/version", "1"},
                                        {"/yarn/category", "4"},
                                        {"/foot/lengthMm", "246"},
                                        {"/foot/ballGirthMm", "228"},
                                        {"/legHeightMm", "200"}}) {
      if (std::string(name) == pointer) turned = turned.with(pointer, literal);
    }
  }
  EXPECT_NE(turned.text(), least_request().text());
  EXPECT_EQ(plan_of(turned), plan_of(least_request()));
  std::string airy;
  for (const char c : least_request().text()) {
    airy += c;
    if (c == ',' || c == ':' || c == '{') airy += " \n\t\r ";
  }
  EXPECT_EQ(answer("plan", airy), plan_of(least_request()));
}

}  // namespace
}  // namespace twinround

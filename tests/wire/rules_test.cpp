// What several fields ask of each other.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

TEST(Rules, TheLeastRequestsAreEnough) {
  EXPECT_EQ(faults(least_request()), Faults{});
  EXPECT_EQ(faults(shoe_request()), Faults{});
  EXPECT_EQ(faults(full_request()), Faults{});
}

TEST(Rules, AnEmptyObjectLacksAllThatIsNeeded) {
  EXPECT_EQ(faults("{}"), (Faults{"/version required", "/swatch required", "/foot required",
                                  "/legHeightMm required"}));
}

TEST(Rules, VersionFootAndLegAreAlwaysNeeded) {
  for (const char* pointer : {"/version", "/foot", "/legHeightMm"}) {
    EXPECT_EQ(faults(full_request().without(pointer)), Faults{std::string(pointer) + " required"});
  }
}

TEST(Rules, ASwatchOrACategoryIsNeeded) {
  const RequestText neither = least_request().without("/yarn");
  EXPECT_EQ(faults(neither), Faults{"/swatch required"});
  EXPECT_EQ(problems_of(neither.text())[0].words.at(0).value, "/yarn/category");
  EXPECT_EQ(faults(least_request()), Faults{});
  EXPECT_EQ(faults(full_request().without("/yarn")), Faults{});
  // A ball alone tells no gauge.
  EXPECT_EQ(faults(neither.with("/yarn/ballG", "100").with("/yarn/ballM", "200")),
            Faults{"/swatch required"});
  // What is given wrongly is named as such, not as missing.
  EXPECT_EQ(faults(neither.with("/yarn/category", "8")), Faults{"/yarn/category out_of_range"});
  EXPECT_EQ(faults(neither.with("/swatch", "3")), Faults{"/swatch wrong_type"});
}

TEST(Rules, ASwatchHasReadingsAndAReadingStitchesAndWidth) {
  EXPECT_EQ(faults(least_request().with("/swatch", "{}")), Faults{"/swatch/readings required"});
  EXPECT_EQ(faults(full_request().without("/swatch/readings/0/stitches")),
            Faults{"/swatch/readings/0/stitches required"});
  EXPECT_EQ(faults(full_request().without("/swatch/readings/0/widthMm")),
            Faults{"/swatch/readings/0/widthMm required"});
}

struct Partners {
  const char* one;
  const char* other;
};
const std::vector<Partners> kPartners = {
    {"/swatch/readings/1/rounds", "/swatch/readings/1/heightMm"},
    {"/swatch/massG", "/swatch/massStitches"},
    {"/yarn/ballG", "/yarn/ballM"},
};

RequestText two_readings() {
  return full_request()
      .with("/swatch/readings/1/stitches", "20")
      .with("/swatch/readings/1/widthMm", "101.6")
      .with("/swatch/readings/1/rounds", "28")
      .with("/swatch/readings/1/heightMm", "101.6");
}

TEST(Rules, PartnersComeTogetherOrNotAtAll) {
  for (const Partners& pair : kPartners) {
    EXPECT_EQ(faults(two_readings().without(pair.one).without(pair.other)), Faults{}) << pair.one;
    for (const auto& [kept, left_out] : {std::pair{pair.one, pair.other}, {pair.other, pair.one}}) {
      const std::vector<Problem> problems = problems_of(two_readings().without(left_out).text());
      ASSERT_EQ(problems.size(), 1U) << kept;
      EXPECT_EQ(problems[0].field, kept);
      EXPECT_EQ(problems[0].code, "needs_partner");
      EXPECT_EQ(problems[0].words.at(0).name, "partner");
      EXPECT_EQ(problems[0].words.at(0).value, left_out);
    }
  }
}

TEST(Rules, OneReadingAtLeastHasRoundsAndHeight) {
  const auto bare = [](const RequestText& request, const std::string& item) {
    return request.without("/swatch/readings/" + item + "/rounds")
        .without("/swatch/readings/" + item + "/heightMm");
  };
  EXPECT_EQ(faults(bare(two_readings(), "0")), Faults{});
  EXPECT_EQ(faults(bare(two_readings(), "1")), Faults{});
  const Faults asked = {"/swatch/readings/0/rounds required",
                        "/swatch/readings/0/heightMm required"};
  EXPECT_EQ(faults(bare(bare(two_readings(), "0"), "1")), asked);
  EXPECT_EQ(faults(bare(full_request(), "0")), asked);
  // Half a pair elsewhere is told as that alone.
  EXPECT_EQ(faults(bare(two_readings(), "0").without("/swatch/readings/1/rounds")),
            Faults{"/swatch/readings/1/heightMm needs_partner"});
  // Asked of the first that is a reading at all.
  EXPECT_EQ(faults(bare(two_readings(), "1")
                       .without("/swatch/readings/0")
                       .with("/swatch", R"({"readings":[5,{"stitches":20,"widthMm":101.6}]})")),
            (Faults{"/swatch/readings/0 wrong_type", "/swatch/readings/1/rounds required",
                    "/swatch/readings/1/heightMm required"}));
}

struct FootCase {
  std::vector<const char*> has;
  Faults told;
};

RequestText with_foot(const std::vector<const char*>& names) {
  RequestText request = least_request().without("/foot");
  for (const std::string name : names) {
    if (name == "shoe") {
      request = request.with("/foot/shoe/scale", "\"eu\"").with("/foot/shoe/size", "39");
    } else if (name == "body") {
      request = request.with("/foot/body", "\"man\"");
    } else {
      request = request.with("/foot/" + name, "250");
    }
  }
  return request;
}

TEST(Rules, WhatHalfAFootLacksIsNamedPrecisely) {
  const char* length = "lengthMm";
  const char* girth = "ballGirthMm";
  const char* shoe = "shoe";
  const char* body = "body";
  const char* heel = "heelAnkleGirthMm";
  const std::vector<FootCase> cases = {
      {{length, girth}, {}},
      {{shoe, body}, {}},
      {{shoe, body, length}, {}},
      {{shoe, body, girth}, {}},
      {{shoe, body, length, girth}, {}},
      {{length, girth, shoe}, {}},
      {{length, girth, body}, {}},
      {{length}, {"/foot/ballGirthMm required"}},
      {{girth}, {"/foot/lengthMm required"}},
      {{length, body}, {"/foot/ballGirthMm required"}},
      {{girth, body}, {"/foot/lengthMm required"}},
      {{shoe}, {"/foot/body required"}},
      {{shoe, length}, {"/foot/body required"}},
      {{shoe, girth}, {"/foot/body required"}},
      {{body}, {"/foot/shoe required"}},
      {{heel}, {"/foot/lengthMm required", "/foot/ballGirthMm required"}},
      {{heel, shoe}, {"/foot/body required"}},
  };
  for (const FootCase& one : cases) {
    EXPECT_EQ(faults(with_foot(one.has)), one.told) << with_foot(one.has).text();
  }
  const RequestText empty = least_request().without("/foot").with("/foot", "{}");
  EXPECT_EQ(faults(empty), (Faults{"/foot/lengthMm required", "/foot/ballGirthMm required"}));
  EXPECT_EQ(problems_of(empty.text())[0].words.at(0).value, "/foot/shoe");
}

TEST(Rules, AShoeHasAScaleAndASize) {
  EXPECT_EQ(faults(shoe_request().without("/foot/shoe").with("/foot/shoe", "{}")),
            (Faults{"/foot/shoe/scale required", "/foot/shoe/size required"}));
  // Beside a measured foot too: what is given is given whole.
  EXPECT_EQ(faults(least_request().with("/foot/shoe/scale", "\"eu\"")),
            Faults{"/foot/shoe/size required"});
}

TEST(Rules, ANewerVersionIsRefusedAsSuchAndNothingElseIsHeldAgainstIt) {
  for (const char* version : {"2", "1.5", "2e9", "1e300"}) {
    const std::string text = "{\"version\":" + std::string(version) + ",\"sleeves\":2}";
    EXPECT_EQ(faults(text), Faults{"/version newer_version"}) << version;
  }
  EXPECT_EQ(problems_of("{\"version\":2}")[0].numbers.at(0).value, 2);
}

TEST(Rules, AVersionThatIsNoneIsOneProblemAmongOthers) {
  const RequestText request = full_request().with("/cuffMm", "301");
  for (const auto& [literal, code] : {std::pair{"0", "out_of_range"},
                                      {"-1", "out_of_range"},
                                      {"0.5", "out_of_range"},
                                      {"\"1\"", "wrong_type"},
                                      {"true", "wrong_type"},
                                      {"null", "wrong_type"},
                                      {"NaN", "not_finite"},
                                      {"Infinity", "not_finite"},
                                      {"1e999", "number_too_large"}}) {
    EXPECT_EQ(faults(request.with("/version", literal)),
              (Faults{"/version " + std::string(code), "/cuffMm out_of_range"}))
        << literal;
  }
  EXPECT_EQ(faults(full_request().with("/version", "1.0")), Faults{});
}

TEST(Rules, FiveFaultsAreFivePointersInTheOrderOfTheContract) {
  const RequestText request = full_request()
                                  .with("/yarnMargin", "1.5")
                                  .with("/swatch/readings/0/widthMm", "\"101.6\"")
                                  .with("/rib/lean", "\"up\"")
                                  .with("/stitchCount", "44.5")
                                  .with("/foot/lengthMm", "NaN");
  EXPECT_EQ(faults(request), (Faults{"/swatch/readings/0/widthMm wrong_type",
                                     "/foot/lengthMm not_finite", "/rib/lean unknown_word",
                                     "/stitchCount not_whole", "/yarnMargin out_of_range"}));
}

TEST(Rules, TheOrderIsTheContractsWhateverTheTexts) {
  const std::string text =
      R"({"yarnMargin":2,"zebra":1,"legHeightMm":1,"foot":{"x":1,"ballGirthMm":1,"lengthMm":1},)"
      R"("yarn":{"ballM":1},"version":0})";
  EXPECT_EQ(faults(text), (Faults{"/zebra unknown_field", "/version out_of_range",
                                  "/swatch required", "/yarn/ballM out_of_range",
                                  "/yarn/ballM needs_partner", "/foot/x unknown_field",
                                  "/foot/lengthMm out_of_range", "/foot/ballGirthMm out_of_range",
                                  "/legHeightMm out_of_range", "/yarnMargin out_of_range"}));
}

}  // namespace
}  // namespace twinround

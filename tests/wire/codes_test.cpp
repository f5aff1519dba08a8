// The codes that the schema lists are those that there are: none is told that is not listed, and
// none is listed that is never told.
#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>
#include <span>
#include <string>

#include "caution_codes.h"
#include "plan.h"
#include "problem_codes.h"
#include "problems.h"
#include "random_request.h"
#include "request_reader.h"
#include "request_text.h"
#include "working_codes.h"

namespace twinround {
namespace {

constexpr unsigned kSeed = 1959;

struct Told {
  std::set<std::string> problems, cautions, figures, rules, sources;

  void hear(const std::vector<Problem>& all) {
    for (const Problem& problem : all) problems.insert(problem.code);
  }
  void hear(std::string_view text) {
    const Result<PlanRequest> request = read_request(text);
    hear(request.problems());
    if (!request.ok()) return;
    const Result<Plan> plan = make_plan(request.value());
    hear(plan.problems());
    if (!plan.ok()) return;
    for (const Caution& caution : plan.value().cautions) cautions.insert(caution.code);
    for (const Working& working : plan.value().working) {
      figures.insert(working.figure);
      rules.insert(working.rule);
      sources.insert(working.source);
    }
  }
  void hear(const RequestText& request) { hear(std::string_view(request.text())); }
};

std::set<std::string> listed(std::span<const std::string_view> codes) {
  std::set<std::string> all;
  for (const std::string_view code : codes) {
    EXPECT_TRUE(all.insert(std::string(code)).second) << code << " is listed twice";
  }
  return all;
}

void hear_faults_of_form(Told& told) {
  told.hear({unknown_question()});
  told.hear(std::string(70000, ' '));
  told.hear("{");
  told.hear(std::string(20, '['));
  told.hear("[]");
  told.hear("{\"version\":2}");
  told.hear("{\"a\":1,\"version\":1,\"version\":1}");
  for (const char* cuff : {"\"30\"", "301", "NaN", "1e999"}) {
    told.hear(full_request().with("/cuffMm", cuff));
  }
  told.hear(full_request().with("/rib/knit", "2.5").with("/rib/lean", "\"up\""));
  told.hear(full_request().without("/yarn/ballG"));
  RequestText thirteen = full_request();
  for (int item = 1; item < 13; ++item) {
    thirteen = thirteen.with("/swatch/readings/" + std::to_string(item), "{}");
  }
  told.hear(thirteen);
}

void hear_faults_of_the_sock(Told& told) {
  told.hear(full_request().with("/stitchCount", "43"));
  told.hear(full_request().with("/legHeightMm", "40"));
  told.hear(full_request().with("/swatch/stretchedWidthMm", "100"));
  told.hear(shoe_request().with("/foot/shoe/size", "1"));
  // 82 mm of foot is a foot, and 0.97 of it too narrow for one.
  told.hear(shoe_request()
                .with("/foot/shoe/scale", "\"mondopoint\"")
                .with("/foot/shoe/size", "80")
                .with("/foot/body", "\"child\""));
  // Long and flat: a toe of half the foot and a cuff as high as the leg.
  told.hear(
      full_request().with("/toe/share", "0.5").with("/cuffMm", "300").with("/legHeightMm", "420"));
  // Ten widenings for such an ankle, and a rib of four rounds.
  told.hear(full_request()
                .with("/swatch/readings/0/rounds", "3")
                .with("/stitchCount", "24")
                .with("/foot/ankleGirthMm", "600"));
  told.hear(full_request().with("/swatch/readings/0/rounds", "600"));
  told.hear(full_request().without("/stitchCount").with("/swatch/readings/0/stitches", "400"));
}

void hear_cautions(Told& told) {
  told.hear(least_request());
  told.hear(shoe_request());
  for (const char* scale : {"\"uk\"", "\"us-women\"", "\"eu\""}) {
    told.hear(shoe_request()
                  .with("/foot/shoe/scale", scale)
                  .with("/foot/shoe/size", scale[1] == 'e' ? "39" : "7"));
  }
  told.hear(shoe_request()
                .with("/foot/shoe/scale", "\"mondopoint\"")
                .with("/foot/shoe/size", "165")
                .with("/foot/body", "\"child\""));
  const RequestText advised = full_request().without("/stitchCount");
  told.hear(advised.with("/rib/knit", "4").with("/rib/purl", "3"));
  told.hear(advised.with("/rib/knit", "1").with("/rib/purl", "1").with("/rib/roundsPerShift", "1"));
  told.hear(advised.with("/rib/knit", "1").with("/rib/purl", "1"));
  told.hear(advised.with("/rib/roundsPerShift", "1"));
  told.hear(advised.with("/swatch/fabric", "\"rib\"").with("/swatch/washed", "false"));
  told.hear(advised.with("/swatch/massG", "9"));
  told.hear(advised.without("/yarn/ballG").without("/yarn/ballM"));
  told.hear(advised.with("/yarn/ballM", "600"));
  told.hear(advised.with("/yarn/ballM", "80"));
  told.hear(advised.with("/yarn/ballM", "209"));
  told.hear(advised.with("/foot/heelAnkleGirthMm", "227"));
  told.hear(advised.with("/swatch/stretchedWidthMm", "400"));
  told.hear(advised.with("/foot/calfGirthMm", "600").with("/legHeightMm", "400"));
  const RequestText plain = advised.without("/swatch/stretchedWidthMm");
  told.hear(plain.with("/foot/heelAnkleGirthMm", "345"));
  for (const char* count : {"28", "32", "36", "72"}) told.hear(plain.with("/stitchCount", count));
  told.hear(plain.without("/foot/heelAnkleGirthMm"));
  told.hear(plain.with("/swatch/readings/0/stitches", "8")
                .with("/swatch/readings/0/rounds", "11")
                .with("/foot/ballGirthMm", "400")
                .with("/foot/heelAnkleGirthMm", "600"));
}

const Told& all_told() {
  static const Told told = [] {
    Told heard;
    hear_faults_of_form(heard);
    hear_faults_of_the_sock(heard);
    hear_cautions(heard);
    std::mt19937 random(kSeed);
    for (int i = 0; i < 4000; ++i) {
      heard.hear(i % 2 == 0 ? wild_request(random) : likely_request(random));
    }
    return heard;
  }();
  return told;
}

TEST(Codes, OfProblemsAreThoseListed) {
  SCOPED_TRACE(kSeed);
  EXPECT_EQ(all_told().problems, listed(kProblemCodes));
}
TEST(Codes, OfCautionsAreThoseListed) {
  SCOPED_TRACE(kSeed);
  EXPECT_EQ(all_told().cautions, listed(kCautionCodes));
}
TEST(Codes, OfFiguresAreThoseListed) {
  SCOPED_TRACE(kSeed);
  EXPECT_EQ(all_told().figures, listed(kWorkingFigures));
}
TEST(Codes, OfRulesAreThoseListed) {
  SCOPED_TRACE(kSeed);
  EXPECT_EQ(all_told().rules, listed(kWorkingRules));
}
TEST(Codes, OfSourcesAreThoseListed) {
  SCOPED_TRACE(kSeed);
  EXPECT_EQ(all_told().sources, listed(kWorkingSources));
}

}  // namespace
}  // namespace twinround

// The working behind each figure: the rule, the numbers put in, the source.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "plan.h"
#include "sock_examples.h"

namespace twinround {
namespace {

using test::planned;
using test::with_rib;
using test::woman_in_worsted;

std::optional<Working> working_of(const Plan& plan, const std::string& figure) {
  for (const Working& working : plan.working) {
    if (working.figure == figure) return working;
  }
  return std::nullopt;
}

double number_of(const Working& working, const std::string& name) {
  for (const Number& number : working.numbers) {
    if (number.name == name) return number.value;
  }
  ADD_FAILURE() << working.figure << " has no number " << name;
  return std::nan("");
}

struct Shown {
  const char* figure = "";
  const char* number = "";
  double value = 0;
};

TEST(Working, EndsInTheFigureItself) {
  const Plan plan = planned(woman_in_worsted());
  // As worked by hand for this sock (see plan_test).
  const std::vector<Shown> table = {
      {"gauge", "stitchesPerMm", 20 / 101.6},
      {"gauge", "roundsPerMm", 28 / 101.6},
      {"gaugeError", "relativeError", 0.0224508},
      {"mmPerStitch", "mmPerStitch", 19.9538439},
      {"restGirthMm", "restGirthMm", 142.24},
      {"firmness", "tightness", 11.2062027},
      {"stitchCount", "ideal", 40.3937008},
      {"stitchCount", "stitches", 40},
      {"heelUse", "heelUse", 0.7767927},
      {"legFit", "use", 0.6948085},
      {"legFit", "stitches", 40},
      {"castOn", "exact", 16},
      {"toeRounds", "exact", 16.9488189},
      {"totalRounds", "exact", 120.2015748},
      {"cuffRounds", "exact", 8.2677165},
      {"strains", "stadium", 0.571},
      {"strains", "breadthShare", 0.25},
      {"cable", "stitches", 40},
      {"minutes", "stitchesOfPair", 9368},
      {"castOn", "castOn", 16},
      {"castOn", "wraps", 8},
      {"toeRounds", "rounds", 17},
      {"toeIncreases", "increases", 6},
      {"lengthMm", "lengthMm", 436.16},
      {"totalRounds", "rounds", 120},
      {"cuffRounds", "rounds", 8},
      {"spiralRounds", "rounds", 95},
      {"pitch", "pitchDeg", 19.2900462},
      {"strains", "backStrain", 0.0225605},
      {"strains", "frontStrain", -0.3661520},
      {"bindOffYarn", "m", 1.2309},
      {"mPerSock", "m", 95.4139663},
      {"mPerSock", "stitches", 4700},
      {"mWithMargin", "m", 209.9107258},
      {"balls", "balls", 2},
      {"gPerPair", "g", 95.4139663},
      {"needle", "mm", 4.5},
      {"cable", "cableMinMm", 806.4},
      {"minutes", "minutes", 664.5333333},
  };
  for (const Shown& row : table) {
    SCOPED_TRACE(row.figure);
    const auto working = working_of(plan, row.figure);
    ASSERT_TRUE(working.has_value());
    EXPECT_NEAR(number_of(*working, row.number), row.value, 1e-7 * std::abs(row.value) + 5e-8);
  }
}

TEST(Working, NamesItsRuleItsNumbersAndItsSource) {
  PlanRequest shoe = woman_in_worsted();
  shoe.foot = FootInput{};
  shoe.foot.shoe = ShoeInput{ShoeScale::eu, 39};
  shoe.foot.body = Body::woman;
  PlanRequest label = woman_in_worsted();
  label.swatch = SwatchInput{};
  PlanRequest weighed = woman_in_worsted();
  weighed.swatch.mass = Mass::from_g(20);
  weighed.swatch.mass_stitches = 2000;
  const std::set<std::string> sources = {"munden-1959",     "cyc-standard-yarn-weight",
                                         "dillmont",        "spencer",
                                         "ansur-ii",        "snyder-1977",
                                         "brannock",        "iso-19407",
                                         "definition",      "european-shoe-table",
                                         "from-memory",     "uk-needle-chart",
                                         "geometry",        "texcoms-2023",
                                         "common-practice", "trade-rule",
                                         "assumption"};
  for (const PlanRequest& request : {woman_in_worsted(), shoe, label, weighed}) {
    std::map<std::string, int> figures;
    for (const Working& working : planned(request).working) {
      SCOPED_TRACE(working.figure);
      EXPECT_NE(working.rule, "");
      EXPECT_FALSE(working.numbers.empty());
      EXPECT_EQ(sources.count(working.source), 1U) << working.source;
      for (const Number& number : working.numbers) {
        EXPECT_NE(number.name, "");
        EXPECT_TRUE(std::isfinite(number.value)) << number.name;
      }
      EXPECT_EQ(++figures[working.figure], 1) << "told twice";
    }
  }
}

TEST(Working, FollowsWhereTheFigureCameFrom) {
  const auto rule = [](const PlanRequest& request, const char* figure) {
    const auto working = working_of(planned(request), figure);
    return working ? working->rule : "";
  };
  PlanRequest request = woman_in_worsted();
  EXPECT_EQ(rule(request, "gauge"), "gauge_pooled");
  EXPECT_EQ(rule(request, "mmPerStitch"), "loop_geometry");
  EXPECT_EQ(rule(request, "stitchCount"), "stitch_count");
  EXPECT_EQ(rule(request, "footLength"), "");
  request.swatch.fabric = Fabric::rib;
  EXPECT_EQ(rule(request, "gauge"), "gauge_from_rib");
  request.swatch.fabric = Fabric::stockinette;
  request.swatch.mass = Mass::from_g(20);
  request.swatch.mass_stitches = 2000;
  EXPECT_EQ(rule(request, "mmPerStitch"), "loop_weighed");
  EXPECT_EQ(rule(request, "geometryMmPerStitch"), "loop_geometry");
  request.stitch_count = 44;
  EXPECT_EQ(rule(request, "stitchCount"), "stitch_count_named");
  request.swatch = SwatchInput{};
  EXPECT_EQ(rule(request, "gauge"), "gauge_from_label");
  EXPECT_EQ(rule(request, "gaugeError"), "label_error");
  request.foot = FootInput{};
  request.foot.shoe = ShoeInput{ShoeScale::eu, 39};
  request.foot.body = Body::woman;
  request.stitch_count.reset();
  EXPECT_EQ(rule(request, "footLength"), "shoe_length");
  EXPECT_EQ(rule(request, "ballGirth"), "ball_girth_estimate");
}

TEST(Working, AWidenedLegIsTestedWithTheStitchesAtItsEdge) {
  PlanRequest request = woman_in_worsted();
  request.leg_height = test::mm(350);
  request.foot.calf_girth = test::mm(452);
  const Plan plan = planned(request);
  const auto leg = working_of(plan, "legFit");
  ASSERT_TRUE(leg.has_value());
  EXPECT_EQ(number_of(*leg, "stitches"), 60);
  EXPECT_NEAR(number_of(*leg, "girthMm") /
                  (number_of(*leg, "stitches") * number_of(*leg, "widestStitchMm")),
              number_of(*leg, "use"), 1e-12);
  EXPECT_EQ(number_of(*working_of(plan, "cable"), "stitches"), 60);
  EXPECT_EQ(number_of(*working_of(plan, "widening"), "repeats"), 10);
}

TEST(Working, AnEstimateShowsItsLine) {
  PlanRequest shoe = woman_in_worsted();
  shoe.foot = FootInput{};
  shoe.foot.shoe = ShoeInput{ShoeScale::eu, 39};
  shoe.foot.body = Body::woman;
  const Plan plan = planned(shoe);
  const auto length = working_of(plan, "footLength");
  // 6.67 x (39 - 2) = 246.79 mm; 86.9 + 0.573 x 246.79 = 228.31.
  EXPECT_NEAR(number_of(*length, "stepMm") * (39 + number_of(*length, "offset")), 246.79, 1e-9);
  const auto girth = working_of(plan, "ballGirth");
  EXPECT_NEAR(number_of(*girth, "constantMm") + number_of(*girth, "perLength") * 246.79, 228.31067,
              1e-9);
  EXPECT_NEAR(number_of(*girth, "girthMm"), 228.31067, 1e-9);
}

TEST(Working, TheErrorNamesWhatAWashAndARibAdd) {
  PlanRequest request = woman_in_worsted();
  request.swatch.washed = false;
  request.swatch.fabric = Fabric::rib;
  const auto error = working_of(planned(request), "gaugeError");
  // 0.0224508, 0.0219247 and 0.10 in quadrature.
  EXPECT_NEAR(number_of(*error, "washError"), 0.0219247, 5e-8);
  EXPECT_NEAR(number_of(*error, "ribError"), 0.10, 1e-12);
  EXPECT_NEAR(number_of(*error, "relativeError"), 0.1048081, 5e-8);
}

TEST(Working, APitchThatIsNoneHasNoWorking) {
  EXPECT_FALSE(working_of(planned(with_rib(woman_in_worsted(), 1, 1, 1)), "pitch").has_value());
  EXPECT_TRUE(working_of(planned(with_rib(woman_in_worsted(), 2, 2, 0)), "pitch").has_value());
}

}  // namespace
}  // namespace twinround

#include "plan_part.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "fields.h"
#include "request_text.h"

namespace twinround {
namespace {

using Faults = std::vector<std::string>;

ReadText part(const RequestText& text) {
  return read_json(text.text(), request_fields());
}

Faults told(const std::vector<Problem>& problems) {
  Faults found;
  for (const Problem& problem : problems) found.push_back(problem.field + " " + problem.code);
  return found;
}

Faults faults_of(const RequestText& text) {
  return told(faults_of_part(part(text), request_fields()));
}

Result<PlanRequest> request_of(const RequestText& common, const RequestText& own) {
  return request_of_parts(laid_over(part(common), part(own)), request_fields());
}

TEST(PlanPart, NeedNotBeWholeAtItsTop) {
  EXPECT_EQ(faults_of({{"/cuffMm", "30"}}), Faults{});
  EXPECT_EQ(faults_of({{"/yarn/category", "4"}}), Faults{});
}

TEST(PlanPart, IsWholeInItsMembers) {
  EXPECT_EQ(faults_of({{"/foot/lengthMm", "246"}}), Faults{"/foot/ballGirthMm required"});
  EXPECT_EQ(faults_of({{"/yarn/ballG", "50"}}), Faults{"/yarn/ballG needs_partner"});
  EXPECT_EQ(faults_of({{"/cuffMm", "301"}, {"/hat", "1"}}),
            (Faults{"/hat unknown_field", "/cuffMm out_of_range"}));
}

TEST(PlanPart, LaidOverAnotherMakesARequestOfBoth) {
  const RequestText common = full_request().without("/foot").without("/version");
  const auto request =
      request_of(common, {{"/foot/lengthMm", "200"}, {"/foot/ballGirthMm", "190"}});
  ASSERT_TRUE(request.ok());
  EXPECT_DOUBLE_EQ(request.value().foot.length->mm(), 200);
  EXPECT_EQ(request.value().stitch_count, 44);
  EXPECT_EQ(request.value().swatch.readings.size(), 1u);
}

TEST(PlanPart, TakesThePlaceOfTheWholeMember) {
  // Were the two feet mixed, the common one's measures would overrule the shoe.
  const auto request = request_of(
      full_request(),
      {{"/foot/shoe/scale", "\"eu\""}, {"/foot/shoe/size", "39"}, {"/foot/body", "\"woman\""}});
  ASSERT_TRUE(request.ok());
  EXPECT_FALSE(request.value().foot.length);
  EXPECT_FALSE(request.value().foot.calf_girth);
  ASSERT_TRUE(request.value().foot.shoe);
}

TEST(PlanPart, WithAYarnOfItsOwnTakesNeitherSwatchNorCountFromTheCommonOne) {
  const auto request = request_of(full_request(), {{"/yarn/category", "3"}});
  ASSERT_TRUE(request.ok());
  EXPECT_TRUE(request.value().swatch.readings.empty());
  EXPECT_FALSE(request.value().stitch_count);
  EXPECT_FALSE(request.value().yarn.ball_mass);
  EXPECT_EQ(request.value().yarn.category, 3);
  const auto slow = request_of(full_request(), {{"/pace/stitchesPerMinute", "8"}});
  EXPECT_EQ(slow.value().swatch.readings.size(), 1u);
  EXPECT_EQ(slow.value().stitch_count, 44);
}

TEST(PlanPart, TellsWhatIsMissingOrWrongInTheWhole) {
  EXPECT_EQ(told(request_of({{"/cuffMm", "30"}}, {{"/legHeightMm", "999"}}).problems()),
            (Faults{"/swatch required", "/foot required", "/legHeightMm out_of_range"}));
  EXPECT_EQ(told(request_of(least_request(), {{"/hat", "1"}}).problems()),
            Faults{"/hat unknown_field"});
  EXPECT_EQ(told(request_of(least_request(), {{"/version", "2"}}).problems()),
            Faults{"/version newer_version"});
}

}  // namespace
}  // namespace twinround

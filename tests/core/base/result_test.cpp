#include "result.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace twinround {
namespace {

Problem too_wide() {
  return {.field = "/swatch/readings/0/widthMm",
          .code = "out_of_range",
          .numbers = {{"min", 10}, {"max", 500}},
          .words = {},
          .message = "The width must be from 10 to 500 mm."};
}

Problem no_foot() {
  return {.field = "/foot", .code = "required", .numbers = {}, .words = {}, .message = "No foot."};
}

TEST(Result, AnAnswerIsHeldAndHasNoProblems) {
  const Result<int> result = 44;
  ASSERT_TRUE(result.ok());
  EXPECT_EQ(result.value(), 44);
  EXPECT_TRUE(result.problems().empty());
}

TEST(Result, OneProblemIsARefusalThatNamesItsField) {
  const Result<int> result = too_wide();
  ASSERT_FALSE(result.ok());
  const std::vector<Problem> problems = result.problems();
  ASSERT_EQ(problems.size(), 1U);
  EXPECT_EQ(problems[0].field, "/swatch/readings/0/widthMm");
  EXPECT_EQ(problems[0].code, "out_of_range");
  ASSERT_EQ(problems[0].numbers.size(), 2U);
  EXPECT_EQ(problems[0].numbers[1].name, "max");
  EXPECT_EQ(problems[0].numbers[1].value, 500);
  EXPECT_EQ(problems[0].message, "The width must be from 10 to 500 mm.");
}

TEST(Result, EveryProblemIsKeptInTheOrderFound) {
  const Result<std::string> result = std::vector<Problem>{no_foot(), too_wide()};
  ASSERT_FALSE(result.ok());
  const std::vector<Problem> problems = result.problems();
  ASSERT_EQ(problems.size(), 2U);
  EXPECT_EQ(problems[0].code, "required");
  EXPECT_EQ(problems[1].code, "out_of_range");
}

TEST(Result, ProblemsOutliveTheResultTheyCameFrom) {
  std::vector<Problem> kept;
  {
    const Result<int> result = no_foot();
    kept = result.problems();
  }
  ASSERT_EQ(kept.size(), 1U);
  EXPECT_EQ(kept[0].field, "/foot");
}

TEST(Result, AnAnswerMayBeAListWithoutBeingTakenForProblems) {
  const Result<std::vector<int>> result = std::vector<int>{};
  EXPECT_TRUE(result.ok());
  EXPECT_TRUE(result.value().empty());
}

TEST(Result, AnAnswerNeedNotBeCopied) {
  const Result<std::unique_ptr<int>> result = std::make_unique<int>(7);
  ASSERT_TRUE(result.ok());
  EXPECT_EQ(*result.value(), 7);
}

TEST(Result, ACopyHoldsTheSame) {
  const Result<std::string> answer = std::string("toe");
  const Result<std::string> refusal = no_foot();
  const Result<std::string> answer_copy = answer;
  const Result<std::string> refusal_copy = refusal;
  EXPECT_EQ(answer_copy.value(), "toe");
  EXPECT_EQ(refusal_copy.problems().size(), 1U);
  EXPECT_EQ(answer.value(), "toe");
}

TEST(Result, ThereIsNoneThatIsNeitherAnswerNorProblem) {
  EXPECT_FALSE((std::is_default_constructible_v<Result<int>>));
}

}  // namespace
}  // namespace twinround

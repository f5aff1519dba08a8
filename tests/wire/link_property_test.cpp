// Ten thousand sheets by chance: what a link says is what the form said, to the plan.
#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>
#include <random>
#include <string>

#include "answer.h"
#include "link_sheets.h"
#include "random_sheet.h"

namespace twinround {
namespace {

constexpr unsigned kSeed = 10000;
constexpr int kSheets = 10000;

TEST(LinkProperty, TenThousandSheetsComeBackToTheSamePlan) {
  SCOPED_TRACE(kSeed);
  std::mt19937 random(kSeed);
  int planned = 0;
  std::size_t longest = 0;
  for (int i = 0; i < kSheets; ++i) {
    const SheetFields fields = random_fields(random, i % 3 != 0);
    const std::string made = answer("link", link_question(fields));
    const std::string link = link_in(made);
    ASSERT_TRUE(made.ends_with(R"("changed":[]}})")) << i << made;
    ASSERT_EQ(answer("link", open_question(link)), made) << i;
    const SheetFields back = fields_of(opened(link));
    ASSERT_EQ(back.size(), fields.size()) << i;
    const std::string plan = answer("plan", request_of(fields).text());
    ASSERT_EQ(answer("plan", request_of(back).text()), plan) << i << link;
    planned += plan.starts_with(R"({"ok":true)") ? 1 : 0;
    longest = std::max(longest, link.size());
  }
  EXPECT_GT(planned, kSheets / 4);
  EXPECT_LE(longest, static_cast<std::size_t>(kLinkMost));
  std::cout << "seed " << kSeed << ": " << planned << " of " << kSheets
            << " were plans, the longest link " << longest << " letters\n";
}

}  // namespace
}  // namespace twinround

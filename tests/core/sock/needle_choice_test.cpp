#include "needle_choice.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sock_examples.h"

namespace twinround {
namespace {

using test::mm;

TEST(NeedleChoice, TakesTheSwatchsOwn) {
  const NeedleChoice choice =
      choose_needle(mm(3.75), *yarn_category(4), Stitches(40), StitchGauge::per(20, mm(101.6)));
  EXPECT_EQ(choice.name.diameter.mm(), 3.75);
  EXPECT_STREQ(choice.name.us, "5");
  EXPECT_STREQ(choice.name.uk, "9");
}

TEST(NeedleChoice, WithoutOneTakesTheThinEndOfTheCategory) {
  const std::vector<double> thin = {1.5, 2.25, 3.25, 3.75, 4.5, 5.5, 8, 12.75};
  for (const YarnCategory& category : yarn_categories()) {
    const NeedleChoice choice =
        choose_needle(std::nullopt, category, Stitches(40), StitchGauge::per(20, mm(101.6)));
    EXPECT_EQ(choice.name.diameter.mm(), thin[static_cast<std::size_t>(category.number)]);
  }
}

TEST(NeedleChoice, ANeedleNobodyNamesKeepsItsSize) {
  const NeedleChoice choice =
      choose_needle(mm(2.6), *yarn_category(1), Stitches(64), StitchGauge::per(32, mm(101.6)));
  EXPECT_EQ(choice.name.diameter.mm(), 2.6);
  EXPECT_STREQ(choice.name.us, "");
  EXPECT_STREQ(choice.name.uk, "");
}

TEST(Cable, CarriesBothSocksFlatWithLoopsAndTips) {
  // 4 x 40/(2 x 0.19685) = 406.4, two loops of 80, two tips of 120: 806.4.
  const NeedleChoice choice =
      choose_needle(mm(4.5), *yarn_category(4), Stitches(40), StitchGauge::per(20, mm(101.6)));
  EXPECT_NEAR(choice.cable_least.mm(), 806.4, 1e-9);
}

TEST(Cable, IsTheNextLengthSoldButNeverUnderAMetreForTwoSocks) {
  // At one stitch a millimetre the cable needs 2 n + 400 mm.
  struct Row {
    int stitches = 0;
    double buy = 0;
  };
  for (const Row& row :
       std::vector<Row>{{8, 1000}, {100, 1000}, {300, 1000}, {302, 1200}, {400, 1200}}) {
    const NeedleChoice choice =
        choose_needle(mm(4.5), *yarn_category(4), Stitches(row.stitches), StitchGauge::per_mm(1));
    ASSERT_TRUE(choice.cable_buy.has_value());
    EXPECT_EQ(choice.cable_buy->mm(), row.buy) << row.stitches;
  }
}

TEST(Cable, NothingIsAdvisedPastTheLongestSold) {
  // Half a stitch a millimetre: 4 n + 400; 1500 mm carry 275.
  const auto buy = [](int n) {
    return choose_needle(mm(4.5), *yarn_category(4), Stitches(n), StitchGauge::per_mm(0.5))
        .cable_buy;
  };
  ASSERT_TRUE(buy(274).has_value());
  EXPECT_EQ(buy(274)->mm(), 1500);
  EXPECT_FALSE(buy(276).has_value());
}

}  // namespace
}  // namespace twinround

#include "size_band.h"

#include <gtest/gtest.h>

#include <string>

#include "drive_examples.h"

namespace twinround {
namespace {

using test::mm;

std::string told(const std::vector<ShoeBand>& bands) {
  const char* const names[] = {"mondopoint", "eu", "us-men", "us-women", "uk"};
  std::string text;
  for (const ShoeBand& band : bands) {
    text += std::string(text.empty() ? "" : ", ") + names[static_cast<int>(band.scale)] + " " +
            std::to_string(band.from) + "-" + std::to_string(band.to);
  }
  return text;
}

// Read (standards section 8): European 36 = 226.6 and 44 = 280.2 mm; US men 10 = 270.9, women 8 =
// 245.5.
TEST(SizeBand, NamesTheWholeSizesThatLieInside) {
  EXPECT_EQ(told(shoe_bands({mm(226), mm(281)}, false, false)), "eu 36-44");
  EXPECT_EQ(told(shoe_bands({mm(228), mm(279)}, false, false)), "eu 37-43");
  EXPECT_EQ(told(shoe_bands({mm(245), mm(246)}, true, false)), "us-women 8-8");
  EXPECT_EQ(told(shoe_bands({mm(270.8), mm(271)}, false, true)), "us-men 10-10");
}

TEST(SizeBand, HasTheScalesOfThoseWhoWearThem) {
  EXPECT_EQ(told(shoe_bands({mm(230), mm(262)}, true, true)),
            "eu 37-41, uk 4-7, us-women 7-9, us-men 6-8");
  EXPECT_EQ(told(shoe_bands({mm(150), mm(180)}, false, false)), "eu 25-28");
  EXPECT_EQ(told(shoe_bands({mm(230), mm(231)}, false, false)), "");
}

}  // namespace
}  // namespace twinround

#include "needle.h"

#include <gtest/gtest.h>

#include <cstddef>
#include <limits>
#include <string>
#include <vector>

#include "units.h"
#include "yarn_category.h"

namespace twinround {
namespace {

std::string us_of(double mm) {
  return name_needle(Length::from_mm(mm)).us;
}
std::string uk_of(double mm) {
  return name_needle(Length::from_mm(mm)).uk;
}

// A UK needle chart (read), as printed: UK, mm, US.
TEST(Needle, NamesFromTwoToTenMillimetresAreTheUkCharts) {
  struct Row {
    const char* uk;
    double mm;
    const char* us;
  };
  const std::vector<Row> published = {
      {"14", 2, "0"},       {"13", 2.25, "1"}, {"12", 2.75, "2"}, {"11", 3, ""},
      {"10", 3.25, "3"},    {"", 3.5, "4"},    {"9", 3.75, "5"},  {"8", 4, "6"},
      {"7", 4.5, "7"},      {"6", 5, "8"},     {"5", 5.5, "9"},   {"4", 6, "10"},
      {"3", 6.5, "10 1/2"}, {"0", 8, "11"},    {"00", 9, "13"},   {"000", 10, "15"},
  };
  for (const Row& row : published) {
    SCOPED_TRACE(row.mm);
    EXPECT_EQ(uk_of(row.mm), row.uk);
    EXPECT_EQ(us_of(row.mm), row.us);
  }
  // Those and the two beyond its ends, which only the Council's ranges name.
  const auto& all = named_needles();
  ASSERT_EQ(all.size(), published.size() + 2);
  EXPECT_EQ(all.front().diameter.mm(), 1.5);
  EXPECT_EQ(all.back().diameter.mm(), 12.75);
  for (std::size_t i = 0; i < published.size(); ++i) {
    EXPECT_EQ(all[i + 1].diameter.mm(), published[i].mm);
  }
}

// Craft Yarn Council, Standard Yarn Weight System (read): the needles of each category in mm and in
// US sizes. The ends of the two columns are the same needles.
TEST(Needle, BothEndsOfEveryCategoryBearTheCouncilsUsNames) {
  struct Row {
    int category;
    const char* us_lo;
    const char* us_hi;
  };
  const std::vector<Row> published = {
      {0, "000", "1"}, {1, "1", "3"},  {2, "3", "5"},   {3, "5", "7"},
      {4, "7", "9"},   {5, "9", "11"}, {6, "11", "17"},
  };
  for (const Row& row : published) {
    SCOPED_TRACE(row.category);
    const auto category = yarn_category(row.category);
    ASSERT_TRUE(category.has_value());
    EXPECT_EQ(std::string(name_needle(category->needle_lo).us), row.us_lo);
    EXPECT_EQ(std::string(name_needle(category->needle_hi).us), row.us_hi);
  }
  EXPECT_EQ(std::string(name_needle(yarn_category(7)->needle_lo).us), "17");
}

TEST(Needle, TheTwoSizesOnlyTheCouncilNamesHaveNoUkName) {
  EXPECT_EQ(uk_of(1.5), "");
  EXPECT_EQ(uk_of(12.75), "");
}

TEST(Needle, TripleNoughtIsAThinNeedleInTheUsAndAThickOneInTheUk) {
  EXPECT_EQ(us_of(1.5), "000");
  EXPECT_EQ(uk_of(10), "000");
}

TEST(Needle, ASizeTheChartsLeaveOutHasNoNames) {
  for (const double mm : {1.0, 1.75, 2.5, 4.25, 7.0, 7.5, 12.0, 15.0, 25.0, 0.0, -4.5}) {
    SCOPED_TRACE(mm);
    EXPECT_EQ(us_of(mm), "");
    EXPECT_EQ(uk_of(mm), "");
  }
}

TEST(Needle, AHundredthOfAMillimetreIsTheSameNeedleAndMoreIsNot) {
  EXPECT_EQ(us_of(3.74), "5");
  EXPECT_EQ(us_of(3.76), "5");
  EXPECT_EQ(us_of(3.739), "");
  EXPECT_EQ(us_of(3.761), "");
}

TEST(Needle, TheDiameterGivenBackIsTheOneAskedFor) {
  EXPECT_EQ(name_needle(Length::from_mm(3.76)).diameter.mm(), 3.76);
  EXPECT_EQ(name_needle(Length::from_mm(2.5)).diameter.mm(), 2.5);
}

TEST(Needle, ADiameterThatIsNotANumberHasNoNames) {
  EXPECT_EQ(us_of(std::numeric_limits<double>::quiet_NaN()), "");
}

TEST(Needle, SizesRiseAndNoTwoCouldBeMistakenForEachOther) {
  const auto& all = named_needles();
  for (std::size_t i = 1; i < all.size(); ++i) {
    EXPECT_GE(all[i].diameter - all[i - 1].diameter, Length::from_mm(0.25)) << all[i].us;
  }
}

// Both names climb one way: US numbers up, UK numbers down, so a swapped row would show.
TEST(Needle, UsNumbersRiseAndUkNumbersFallWithThickness) {
  int us_before = -1;
  int uk_before = 15;
  for (const NeedleName& needle : named_needles()) {
    const std::string us = needle.us;
    const std::string uk = needle.uk;
    SCOPED_TRACE(us + " / " + uk);
    if (!us.empty() && us != "000" && us != "10 1/2") {
      EXPECT_GT(std::stoi(us), us_before);
      us_before = std::stoi(us);
    }
    if (!uk.empty()) {
      // 0, 00, 000: each nought more is a size thicker.
      const int rank = uk[0] == '0' ? 1 - static_cast<int>(uk.size()) : std::stoi(uk);
      EXPECT_LT(rank, uk_before);
      uk_before = rank;
    }
  }
}

// Common practice, no source: 16, 24, 32, 40, 47, 60 in = 40, 60, 80, 100, 120, 150 cm.
TEST(Needle, CircularNeedlesAreSoldInSixLengths) {
  struct Row {
    int inches;
    double cm;
  };
  const std::vector<Row> sold = {{16, 40}, {24, 60}, {32, 80}, {40, 100}, {47, 120}, {60, 150}};
  ASSERT_EQ(circular_lengths().size(), sold.size());
  for (std::size_t i = 0; i < sold.size(); ++i) {
    EXPECT_EQ(circular_lengths()[i].inches, sold[i].inches);
    EXPECT_EQ(circular_lengths()[i].length.cm(), sold[i].cm);
    // Two names for one article: never further apart than an inch.
    EXPECT_NEAR(Length::from_in(sold[i].inches).mm(), sold[i].cm * 10, 25.4);
  }
}

TEST(Needle, TheNextCableSoldIsTheShortestThatIsLongEnough) {
  struct Row {
    double wanted;
    double sold;
  };
  const std::vector<Row> rows = {
      {-1, 400},        {0, 400},       {400, 400},       {400 + 1e-10, 400}, {400.001, 600},
      {600, 600},       {600.001, 800}, {800, 800},       {806.4, 1000},      {1000, 1000},
      {1000.001, 1200}, {1200, 1200},   {1200.001, 1500}, {1500, 1500},
  };
  for (const Row& row : rows) {
    const auto sold = next_cable_sold(Length::from_mm(row.wanted));
    ASSERT_TRUE(sold.has_value()) << row.wanted;
    EXPECT_EQ(sold->mm(), row.sold) << row.wanted;
  }
}

TEST(Needle, NoCableIsSoldPastTheLongest) {
  EXPECT_FALSE(next_cable_sold(Length::from_mm(1500.001)).has_value());
  EXPECT_FALSE(next_cable_sold(Length::from_m(10)).has_value());
  EXPECT_FALSE(
      next_cable_sold(Length::from_mm(std::numeric_limits<double>::quiet_NaN())).has_value());
}

// Common practice, no source: at least 40 in (100 cm) for two socks by magic loop.
TEST(Needle, TheLeastCableForTwoIsTheOneSoldAsFortyInches) {
  EXPECT_EQ(kLeastCableForTwo.mm(), 1000.0);
  const auto sold = next_cable_sold(kLeastCableForTwo);
  ASSERT_TRUE(sold.has_value());
  EXPECT_EQ(*sold, kLeastCableForTwo);
  EXPECT_EQ(*sold, circular_lengths()[3].length);
  EXPECT_EQ(circular_lengths()[3].inches, 40);
}

}  // namespace
}  // namespace twinround

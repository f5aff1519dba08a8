// The knitter's own count, the counts offered around one, and the ribs that would fit better.
#include <gtest/gtest.h>

#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "sock_examples.h"
#include "stitch_count.h"

namespace twinround {
namespace {

using test::mm;
using test::number_in;
using test::values;

TEST(NamedCount, IsObeyedWhateverItsEase) {
  for (const int n : {8, 12, 40, 44, 396, 400}) {
    ASSERT_TRUE(accept_count(n, 4).ok()) << n;
    EXPECT_EQ(accept_count(n, 4).value().value(), n);
  }
}

struct Named {
  int named = 0;
  int repeat = 0;
  std::optional<double> below, above;
};

TEST(NamedCount, IsRefusedWithTheTwoNearestWhereItIsNoCount) {
  const std::vector<Named> table = {
      {41, 4, 40, 44},
      {42, 4, 40, 44},
      {43, 4, 40, 44},
      {45, 5, 40, 50},  // odd, though a multiple of 5
      {9, 4, 8, 12},
      {399, 4, 396, 400},
      {8, 24, std::nullopt, 24},     // nothing under 24
      {400, 23, 368, std::nullopt},  // nothing over 8 x 46
      {9, 2, 8, 10},
  };
  for (const Named& row : table) {
    SCOPED_TRACE(std::to_string(row.named) + " by " + std::to_string(row.repeat));
    const Result<Stitches> refused = accept_count(row.named, row.repeat);
    ASSERT_FALSE(refused.ok());
    ASSERT_EQ(test::told(refused.problems()),
              (std::vector<std::string>{"not_a_count@/stitchCount"}));
    const Problem problem = refused.problems().front();
    EXPECT_EQ(number_in(problem, "given"), row.named);
    EXPECT_EQ(number_in(problem, "below"), row.below);
    EXPECT_EQ(number_in(problem, "above"), row.above);
  }
}

TEST(NamedCount, WhatARefusalOffersIsAcceptedForEveryRepeat) {
  for (int repeat = 2; repeat <= 24; ++repeat) {
    for (int named = 8; named <= 400; ++named) {
      const Result<Stitches> result = accept_count(named, repeat);
      if (result.ok()) continue;
      const Problem problem = result.problems().front();
      const auto below = number_in(problem, "below");
      const auto above = number_in(problem, "above");
      ASSERT_TRUE(below || above) << named << " by " << repeat;
      // The nearest: no other count lies between them.
      for (int n = below ? static_cast<int>(*below) + 1 : 8;
           n < (above ? static_cast<int>(*above) : 401); ++n) {
        ASSERT_FALSE(is_count(n, repeat)) << n << " by " << repeat;
      }
      ASSERT_TRUE(!below || is_count(static_cast<int>(*below), repeat));
      ASSERT_TRUE(!above || is_count(static_cast<int>(*above), repeat));
    }
  }
}

TEST(Choices, AreFiveWithTheCountInTheMiddle) {
  EXPECT_EQ(values(counts_around(Stitches(40), 4)), (std::vector<int>{32, 36, 40, 44, 48}));
  EXPECT_EQ(values(counts_around(Stitches(50), 5)), (std::vector<int>{30, 40, 50, 60, 70}));
}

TEST(Choices, MoveAsideAtTheEndsOfTheRange) {
  EXPECT_EQ(values(counts_around(Stitches(8), 4)), (std::vector<int>{8, 12, 16, 20, 24}));
  EXPECT_EQ(values(counts_around(Stitches(12), 4)), (std::vector<int>{8, 12, 16, 20, 24}));
  EXPECT_EQ(values(counts_around(Stitches(16), 4)), (std::vector<int>{8, 12, 16, 20, 24}));
  EXPECT_EQ(values(counts_around(Stitches(400), 4)), (std::vector<int>{384, 388, 392, 396, 400}));
  EXPECT_EQ(values(counts_around(Stitches(10), 5)), (std::vector<int>{10, 20, 30, 40, 50}));
  EXPECT_EQ(values(counts_around(Stitches(368), 23)), (std::vector<int>{184, 230, 276, 322, 368}));
}

// A woman's mean foot at 18 stitches over 4 in: T = 228 x 0.9 x 18/101.6 = 36.35.
CountInput woman_at_18(double widest_stitch_mm) {
  CountInput input;
  input.ball_girth = mm(228);
  input.heel_girth = mm(310);
  input.gauge = StitchGauge::per(18, mm(101.6));
  input.widest_stitch = mm(widest_stitch_mm);
  input.girth_ease = -0.10;
  return input;
}

std::vector<std::string> named(const std::vector<RibThatFits>& ribs) {
  std::vector<std::string> names;
  names.reserve(ribs.size());
  for (const RibThatFits& rib : ribs) {
    names.push_back("k" + std::to_string(rib.knit) + "p" + std::to_string(rib.purl) + " on " +
                    std::to_string(rib.count.value()));
  }
  return names;
}

TEST(RibsThatFit, AreThoseWhoseOwnCountHasTheEase) {
  // Within 4.444 % of 36.35 lie 34.7 to 38.0: of the even counts 36 alone is a multiple of 2, 3, 4
  // or 6. A repeat of 5 has 40, 7 has 42, 8 has 40: no. 36 x 11.1 x 0.85 = 339.7 passes a heel of
  // 310.
  EXPECT_EQ(named(ribs_that_fit(woman_at_18(11.1))),
            (std::vector<std::string>{"k1p1 on 36", "k1p2 on 36", "k1p3 on 36", "k2p1 on 36",
                                      "k2p2 on 36", "k2p4 on 36", "k3p1 on 36", "k3p3 on 36",
                                      "k4p2 on 36"}));
}

TEST(RibsThatFit, PassTheHeel) {
  // 36 stitches pass 310 mm from 310/(36 x 0.85) = 10.1307 mm a stitch.
  EXPECT_EQ(ribs_that_fit(woman_at_18(10.1308)).size(), 9U);
  EXPECT_TRUE(ribs_that_fit(woman_at_18(10.1306)).empty());
}

TEST(RibsThatFit, ComeNearestEaseFirst) {
  CountInput input = woman_at_18(11.1);
  input.gauge = StitchGauge::per(20, mm(101.6));  // T = 40.39: 40 is 1 % off, 42 is 4 %
  const std::vector<RibThatFits> ribs = ribs_that_fit(input);
  ASSERT_FALSE(ribs.empty());
  EXPECT_EQ(ribs.front().count.value(), 40);
  EXPECT_EQ(ribs.back().count.value(), 42);
  for (std::size_t i = 0; i < ribs.size(); ++i) {
    SCOPED_TRACE(named(ribs)[i]);
    // n/(228 x 20/101.6) - 1
    EXPECT_NEAR(ribs[i].ease, ribs[i].count.value() / 44.8819 - 1, 1e-5);
    const double before = i > 0 ? std::abs(ribs[i - 1].ease + 0.10) : 0;
    EXPECT_LE(before, std::abs(ribs[i].ease + 0.10) + 1e-9);
  }
}

}  // namespace
}  // namespace twinround

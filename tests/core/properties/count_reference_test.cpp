// The count again, worked another way: every count looked at in turn, instead of the nearest
// computed.
#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>
#include <vector>

#include "random_requests.h"
#include "stitch_count.h"

namespace twinround {
namespace {

using test::Dice;
using test::mm;

constexpr double kHair = 1e-9;

struct Asked {
  double girth = 0;
  double ease = 0;
  double gauge = 0;
  double heel = 0;
  double widest = 0;
  int repeat = 0;
};

bool near(double n, const Asked& asked) {
  return std::abs(n / (asked.girth * asked.gauge) - 1 - asked.ease) <= 0.04 + kHair;
}

bool passes(double n, const Asked& asked) {
  return asked.heel / (n * asked.widest) <= 0.85 + kHair;
}

// The one nearest to the ideal, the smaller of two as near.
std::optional<int> nearest_of(const std::vector<int>& counts, double ideal) {
  std::optional<int> best;
  for (const int n : counts) {
    if (!best || std::abs(n - ideal) < std::abs(*best - ideal) - kHair) best = n;
  }
  return best;
}

// Nothing where no count serves.
std::optional<int> reference_count(const Asked& asked) {
  std::vector<int> counts, alike;
  for (int n = 2; n <= 400; n += 2) {
    if (n < 8 || n % asked.repeat != 0) continue;
    counts.push_back(n);
    if (n % (2 * asked.repeat) == 0) alike.push_back(n);
  }
  const double ideal = asked.girth * (1 + asked.ease) * asked.gauge;
  std::optional<int> count = nearest_of(alike, ideal);
  if (!count || !near(*count, asked)) count = nearest_of(counts, ideal);
  for (const int n : counts) {
    if (n >= *count && passes(n, asked)) return n;
  }
  return std::nullopt;
}

CountInput input_of(const Asked& asked) {
  CountInput input;
  input.ball_girth = mm(asked.girth);
  input.girth_ease = asked.ease;
  input.gauge = StitchGauge::per_mm(asked.gauge);
  input.heel_girth = mm(asked.heel);
  input.widest_stitch = mm(asked.widest);
  input.repeat = asked.repeat;
  return input;
}

std::optional<int> advised(const Asked& asked) {
  const Result<CountAdvice> advice = advise_count(input_of(asked));
  if (!advice.ok()) return std::nullopt;
  return advice.value().count.value();
}

TEST(CountReference, AgreesOverEveryQuarterStitchAndRepeat) {
  for (int repeat = 2; repeat <= 24; ++repeat) {
    // From where the nearest multiple is a count to where 400 or its last neighbour is.
    for (double ideal = 2.0 * repeat + 8; ideal <= 366; ideal += 0.25) {
      for (const double heel_share : {0.5, 1.2, 1.36, 1.5}) {
        const double girth = ideal / 0.9;
        // One stitch a millimetre, that goes twice as wide.
        const Asked asked{girth, -0.10, 1, heel_share * girth, 1.96, repeat};
        ASSERT_EQ(advised(asked), reference_count(asked))
            << ideal << " by " << repeat << ", heel " << heel_share;
      }
    }
  }
}

TEST(CountReference, AgreesOnRandomFeetAndGauges) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  int compared = 0;
  for (std::uint32_t i = 0; i < 20000; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    Dice dice(first + i);
    Asked asked;
    asked.girth = dice.between(100, 320);
    asked.ease = dice.between(-0.4, 0.2);
    asked.gauge = dice.between(0.08, 0.6);
    asked.heel = asked.girth * dice.between(1.1, 1.6);
    asked.widest = dice.between(1.8, 2.2) / asked.gauge;
    asked.repeat = dice.whole(2, 24);
    const double ideal = asked.girth * (1 + asked.ease) * asked.gauge;
    if (ideal < 2.0 * asked.repeat + 8 || ideal > 366) continue;
    ++compared;
    ASSERT_EQ(advised(asked), reference_count(asked));
  }
  EXPECT_GT(compared, 5000);
}

TEST(CountReference, AgreesOnRibsThatFit) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  for (std::uint32_t i = 0; i < 5000; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    Dice dice(first + i);
    Asked asked;
    asked.girth = dice.between(150, 320);
    asked.ease = dice.between(-0.2, -0.02);
    asked.gauge = dice.between(0.15, 0.5);
    asked.heel = asked.girth * dice.between(1.25, 1.5);
    asked.widest = dice.between(1.8, 2.2) / asked.gauge;
    asked.repeat = 2;
    std::vector<RibThatFits> ribs = ribs_that_fit(input_of(asked));
    for (int knit = 1; knit <= 4; ++knit) {
      for (int purl = 1; purl <= 4; ++purl) {
        Asked with_rib = asked;
        with_rib.repeat = knit + purl;
        Asked without_heel = with_rib;
        without_heel.heel = 0;
        const std::optional<int> own = reference_count(without_heel);
        const bool fits = own && near(*own, with_rib) && passes(*own, with_rib);
        std::optional<int> told;
        for (const RibThatFits& rib : ribs) {
          if (rib.knit == knit && rib.purl == purl) told = rib.count.value();
        }
        ASSERT_EQ(told, fits ? own : std::nullopt) << "k" << knit << " p" << purl;
      }
    }
  }
}

}  // namespace
}  // namespace twinround

// The choice of sizes against every choice there is.
#include "size_choice.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "drive_examples.h"
#include "ordered_sizes.h"

namespace twinround {
namespace {

using test::Dice;
using test::mm;
using test::worsted;

// A table of random cells with few candidates: feet all over the place, as no survey has them.
CoverTable random_table(Dice& dice) {
  CoverTable table;
  const int strips = dice.whole(3, 8);
  const int counts = dice.whole(2, 4);
  const int feet = dice.whole(2, 4);
  double all = 0;
  for (int strip = 0; strip < strips; ++strip) {
    table.strips.push_back(static_cast<int>(table.cells.size()));
    table.strip_edges.push_back(mm(200 + 10 * strip));
    for (int cell = dice.whole(1, 5); cell > 0; --cell) {
      table.cells.push_back({dice.between(0.01, 1), mm(205 + 10 * strip), mm(200), Body::woman});
      all += table.cells.back().weight;
    }
  }
  for (FootCell& cell : table.cells) cell.weight /= all;
  table.strips.push_back(static_cast<int>(table.cells.size()));
  table.strip_edges.push_back(mm(200 + 10 * strips));
  for (int count = 0; count < counts; ++count) {
    table.counts.push_back(Stitches(40 + 4 * count));
    table.served.emplace_back();
    for (std::size_t cell = 0; cell < table.cells.size(); ++cell) {
      table.served.back().push_back(dice.chance(0.6) ? dice.between(0, 1) : 0);
    }
  }
  for (int foot = 0; foot < feet; ++foot) {
    table.feet.push_back(mm(200 + 5 * foot));
    const int first = dice.whole(0, strips - 1);
    table.reaches.push_back({first, dice.whole(first, strips)});
  }
  return table;
}

// Of every cell the largest share, summed the plain way.
double plain_share(const CoverTable& table, const std::vector<int>& sizes) {
  double sum = 0;
  for (std::size_t strip = 0; strip + 1 < table.strips.size(); ++strip) {
    for (int cell = table.strips[strip]; cell < table.strips[strip + 1]; ++cell) {
      double most = 0;
      for (const int size : sizes) {
        const Reach reach = table.reaches[table.foot_of(size)];
        const int at = static_cast<int>(strip);
        if (at < reach.first || at >= reach.end || table.is_barred(size)) continue;
        most = std::max(most, table.served[table.count_of(size)][static_cast<std::size_t>(cell)]);
      }
      sum += most * table.cells[static_cast<std::size_t>(cell)].weight;
    }
  }
  return sum;
}

struct Best {
  double share = -1;
  double ordered = -1;  // of those in which each is as wide and as long as the one before, or more
};

// Every choice of k candidates.
void try_all(const CoverTable& table, int k, std::vector<int>& sizes, Best& best) {
  if (static_cast<int>(sizes.size()) == k) {
    const double share = plain_share(table, sizes);
    best.share = std::max(best.share, share);
    bool ordered = true;
    for (std::size_t i = 1; i < sizes.size(); ++i) {
      ordered = ordered && table.foot_of(sizes[i - 1]) <= table.foot_of(sizes[i]);
    }
    if (ordered) best.ordered = std::max(best.ordered, share);
    return;
  }
  for (int next = sizes.empty() ? 0 : sizes.back() + 1; next < table.size(); ++next) {
    sizes.push_back(next);
    try_all(table, k, sizes, best);
    sizes.pop_back();
  }
}

Best best_of_all(const CoverTable& table, int k) {
  Best best;
  std::vector<int> sizes;
  try_all(table, k, sizes, best);
  return best;
}

TEST(SizeChoice, ServesAsMuchAsTheBestOfAllChoices) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  for (std::uint32_t i = 0; i < 300; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    Dice dice(first + i);
    CoverTable table = random_table(dice);
    if (dice.chance(0.3)) {
      table.barred.assign(static_cast<std::size_t>(table.size()), 0);
      table.barred[static_cast<std::size_t>(dice.whole(0, table.size() - 1))] = 1;
    }
    for (int k = 1; k <= 3; ++k) {
      const SizeChoice choice = best_sizes(table, k, 1, {});
      const Best best = best_of_all(table, k);
      ASSERT_EQ(static_cast<int>(choice.candidates.size()), k);
      ASSERT_NEAR(choice.share, plain_share(table, choice.candidates), 1e-9);
      ASSERT_GE(choice.share, best.share - kSlack - 1e-9);
      ASSERT_LE(choice.share, best.share + 1e-9);
      ASSERT_GE(choice.at_most, best.share - 1e-9);
      ASSERT_LE(choice.at_most, choice.share + kSlack + 1e-9);  // small enough never to give up
      for (const int candidate : choice.candidates) {
        ASSERT_FALSE(table.is_barred(candidate));
      }
    }
  }
}

// A wanted share between what the slack leaves open is settled to the last foot.
TEST(SizeChoice, NeverMissesAWantedShareThatSomeChoiceReaches) {
  const std::uint32_t first = test::first_seed();
  RecordProperty("seed", std::to_string(first));
  for (std::uint32_t i = 0; i < 100; ++i) {
    SCOPED_TRACE("TWINROUND_SEED=" + std::to_string(first + i));
    Dice dice(first + i);
    const CoverTable table = random_table(dice);
    const double best = best_of_all(table, 2).share;
    ASSERT_GE(best_sizes(table, 2, best - 1e-8, {}).share, best - 1e-8);
  }
}

// With feet as they are: every choice of two and three among all candidates of a coarse rib.
TEST(SizeChoice, ServesAsMuchAsTheBestOfAllChoicesForSurveyedFeet) {
  for (const auto& groups : {test::women(), test::women_and_men()}) {
    const CoverTable table = cover_table(feet_of(groups), worsted(), 8);
    ASSERT_LE(table.size(), 110);
    for (int k = 1; k <= 3; ++k) {
      const Best best = best_of_all(table, k);
      const SizeChoice choice = best_sizes(table, k, 1, {});
      EXPECT_NEAR(choice.share, best.share, kSlack + 1e-9) << k;
      EXPECT_NEAR(share_of(table, ordered_sizes(table, 3)[static_cast<std::size_t>(k - 1)]),
                  best.ordered, 1e-9)
          << k;
    }
  }
}

TEST(SizeChoice, OfMoreSizesNeverServesLess) {
  const CoverTable table = cover_table(feet_of(test::a_village()), worsted(), 4);
  const auto runs = ordered_sizes(table, kMostSizes);
  double last = 0;
  for (int k = 1; k <= kMostSizes; ++k) {
    const auto& run = runs[static_cast<std::size_t>(k - 1)];
    const SizeChoice choice = best_sizes(table, k, 1, run);
    EXPECT_GE(choice.share, share_of(table, run) - 1e-9);
    EXPECT_GE(choice.share, last - kSlack);
    EXPECT_GE(choice.at_most, choice.share);
    EXPECT_LE(choice.at_most, share_of_all(table) + 1e-9);
    last = choice.share;
  }
}

TEST(OrderedSizes, GrowInBothWaysAndSumToWhatTheyServe) {
  const CoverTable table = cover_table(feet_of(test::a_village()), worsted(), 4);
  const auto runs = ordered_sizes(table, kMostSizes);
  for (const auto& run : runs) {
    for (std::size_t i = 1; i < run.size(); ++i) {
      EXPECT_LE(table.count_of(run[i - 1]), table.count_of(run[i]));
      EXPECT_LE(table.foot_of(run[i - 1]), table.foot_of(run[i]));
    }
    EXPECT_NEAR(share_of(table, run), plain_share(table, run), 1e-9);
  }
}

}  // namespace
}  // namespace twinround

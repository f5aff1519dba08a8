#include "ordered_sizes.h"

#include <algorithm>

#include "rounding.h"

namespace twinround {

namespace {

constexpr double kNone = -1;  // a share that no run has

using Sums = std::vector<double>;  // of the strips below each strip

double between(const Sums& sums, const Reach& reach) {
  if (reach.first >= reach.end) return 0;
  return sums[static_cast<std::size_t>(reach.end)] - sums[static_cast<std::size_t>(reach.first)];
}

class Runs {
 public:
  Runs(const CoverTable& table, int most)
      : table_(table),
        most_(static_cast<std::size_t>(most)),
        shares_(table.counts.size() * table.feet.size() * most_, kNone),
        before_(shares_.size(), -1) {}

  std::vector<std::vector<int>> best();

 private:
  Sums shared(std::size_t narrow, std::size_t wide) const;
  void follow(std::size_t narrow, std::size_t wide, const Sums& both);
  void begin(std::size_t count, const Sums& alone);
  std::size_t at(std::size_t count, std::size_t foot) const {
    return count * table_.feet.size() + foot;
  }
  bool is_barred(std::size_t candidate) const {
    return table_.is_barred(static_cast<int>(candidate));
  }

  const CoverTable& table_;
  std::size_t most_;
  Sums shares_;              // of the best run of k + 1 sizes that ends with a candidate
  std::vector<int> before_;  // the candidate before the last of it
};

// What two counts both serve, strip by strip.
Sums Runs::shared(std::size_t narrow, std::size_t wide) const {
  const std::vector<double>& one = table_.served[narrow];
  const std::vector<double>& other = table_.served[wide];
  Sums sums = {0};
  for (std::size_t strip = 0; strip + 1 < table_.strips.size(); ++strip) {
    double sum = sums.back();
    const auto end = static_cast<std::size_t>(table_.strips[strip + 1]);
    for (auto cell = static_cast<std::size_t>(table_.strips[strip]); cell < end; ++cell) {
      sum += table_.cells[cell].weight * std::min(one[cell], other[cell]);
    }
    sums.push_back(sum);
  }
  return sums;
}

void Runs::begin(std::size_t count, const Sums& alone) {
  for (std::size_t foot = 0; foot < table_.feet.size(); ++foot) {
    if (!is_barred(at(count, foot))) {
      shares_[at(count, foot) * most_] = between(alone, table_.reaches[foot]);
    }
  }
}

// Runs that end with the narrower count go on with the wider one (or the same, made longer).
// Between feet of one count the shorter comes first, so that it is settled when the longer asks.
void Runs::follow(std::size_t narrow, std::size_t wide, const Sums& both) {
  for (std::size_t foot = 0; foot < table_.feet.size(); ++foot) {
    const std::size_t last = at(wide, foot);
    if (is_barred(last)) continue;
    const double alone = shares_[last * most_];
    const std::size_t end = narrow == wide ? foot : foot + 1;
    for (std::size_t shorter = 0; shorter < end; ++shorter) {
      const Reach common = {table_.reaches[foot].first, table_.reaches[shorter].end};
      const double gain = alone - between(both, common);
      const std::size_t from = at(narrow, shorter);
      for (std::size_t k = 1; k < most_ && shares_[from * most_ + k - 1] > kNone; ++k) {
        const double share = shares_[from * most_ + k - 1] + gain;
        if (!clearly_above(share, shares_[last * most_ + k])) continue;
        shares_[last * most_ + k] = share;
        before_[last * most_ + k] = static_cast<int>(from);
      }
    }
  }
}

std::vector<std::vector<int>> Runs::best() {
  for (std::size_t wide = 0; wide < table_.counts.size(); ++wide) {
    begin(wide, shared(wide, wide));
    for (std::size_t narrow = 0; narrow <= wide; ++narrow) {
      follow(narrow, wide, shared(narrow, wide));
    }
  }
  std::vector<std::vector<int>> runs(most_);
  for (std::size_t k = 0; k < most_; ++k) {
    int last = -1;
    double most = kNone;
    for (int i = 0; i < table_.size(); ++i) {
      const double share = shares_[static_cast<std::size_t>(i) * most_ + k];
      if (!clearly_above(share, most)) continue;
      most = share;
      last = i;
    }
    for (std::size_t left = k; last >= 0; --left) {
      runs[k].insert(runs[k].begin(), last);
      last = before_[static_cast<std::size_t>(last) * most_ + left];
    }
  }
  return runs;
}

}  // namespace

std::vector<std::vector<int>> ordered_sizes(const CoverTable& table, int most) {
  return Runs(table, most).best();
}

}  // namespace twinround

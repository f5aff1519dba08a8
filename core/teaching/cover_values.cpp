#include "cover_values.h"

#include <algorithm>

namespace twinround {

namespace {

constexpr double kNearlyNone = 1e-7;  // of a cell: too few of its feet to look at

constexpr double kBarred = -1;  // worth less than nothing

}  // namespace

// A strip holds the cells of each body one after another: those between the first and the last that
// a count serves are kept, with nothings between bodies.
CoverValues::CoverValues(const CoverTable& table)
    : counts_(table.counts.size()),
      strips_(table.strips.empty() ? 0 : table.strips.size() - 1),
      reaches_(table.reaches),
      barred_(table.barred) {
  weight_.reserve(table.cells.size());
  for (const FootCell& cell : table.cells) weight_.push_back(cell.weight);
  runs_.reserve(counts_ * strips_);
  for (const std::vector<double>& served : table.served) {
    for (std::size_t strip = 0; strip < strips_; ++strip) {
      auto first = static_cast<std::size_t>(table.strips[strip]);
      auto end = static_cast<std::size_t>(table.strips[strip + 1]);
      while (first < end && served[first] < kNearlyNone) ++first;
      while (first < end && served[end - 1] < kNearlyNone) --end;
      runs_.push_back({first, end, shares_.size()});
      for (std::size_t cell = first; cell < end; ++cell) shares_.push_back(served[cell]);
    }
  }
}

std::vector<double> CoverValues::above(const std::vector<double>& floor) const {
  std::vector<double> values;
  values.reserve(counts_ * reaches_.size());
  std::vector<double> up_to(strips_ + 1);
  for (std::size_t count = 0; count < counts_; ++count) {
    for (std::size_t strip = 0; strip < strips_; ++strip) {
      const Run& cells = runs_[count * strips_ + strip];
      const double* share = shares_.data() + cells.share;
      double sum = 0;
      for (std::size_t i = cells.first; i < cells.end; ++i, ++share) {
        sum += weight_[i] * std::max(0.0, *share - floor[i]);
      }
      up_to[strip + 1] = up_to[strip] + sum;
    }
    for (const Reach& reach : reaches_) {
      const bool is_barred = !barred_.empty() && barred_[values.size()] != 0;
      const double value =
          up_to[static_cast<std::size_t>(reach.end)] - up_to[static_cast<std::size_t>(reach.first)];
      values.push_back(is_barred ? kBarred : value);
    }
  }
  return values;
}

void CoverValues::raise(std::vector<double>& level, int candidate) const {
  each_cell(candidate, [&level](std::size_t cell, double share) {
    level[cell] = std::max(level[cell], share);
  });
}

double CoverValues::sum(const std::vector<double>& level) const {
  double sum = 0;
  for (std::size_t cell = 0; cell < weight_.size(); ++cell) sum += weight_[cell] * level[cell];
  return sum;
}

}  // namespace twinround

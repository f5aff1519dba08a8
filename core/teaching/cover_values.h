// Sums over a cover table: the inner loops of choosing sizes.
#pragma once

#include <vector>

#include "cover_table.h"

namespace twinround {

// A table packed so that summing is quick: of every count the cells it serves at all, strip by
// strip.
class CoverValues {
 public:
  explicit CoverValues(const CoverTable& table);

  int candidates() const { return static_cast<int>(counts_ * reaches_.size()); }
  // How many numbers `above` looks at.
  double size() const { return static_cast<double>(shares_.size()); }
  std::size_t cells() const { return weight_.size(); }
  double weight(std::size_t cell) const { return weight_[cell]; }

  // Of every candidate the sum over its cells of weight x max(0, served - floor); less than nothing
  // for a barred one.
  std::vector<double> above(const std::vector<double>& floor) const;

  // Calls visit(cell, served) for every cell that a candidate serves in part at least.
  template <class Visit>
  void each_cell(int candidate, const Visit& visit) const;

  // Raises `level` to what the candidate serves.
  void raise(std::vector<double>& level, int candidate) const;
  // Sum of weight x level.
  double sum(const std::vector<double>& level) const;

 private:
  struct Run {  // cells of one strip that one count serves, and where their shares stand
    std::size_t first = 0;
    std::size_t end = 0;
    std::size_t share = 0;
  };
  const Run& run(std::size_t count, int strip) const {
    return runs_[count * strips_ + static_cast<std::size_t>(strip)];
  }

  std::size_t counts_ = 0;
  std::size_t strips_ = 0;
  std::vector<Reach> reaches_;
  std::vector<char> barred_;
  std::vector<double> weight_;
  std::vector<Run> runs_;
  std::vector<double> shares_;
};

template <class Visit>
void CoverValues::each_cell(int candidate, const Visit& visit) const {
  const Reach& reach = reaches_[static_cast<std::size_t>(candidate) % reaches_.size()];
  const std::size_t count = static_cast<std::size_t>(candidate) / reaches_.size();
  for (int strip = reach.first; strip < reach.end; ++strip) {
    const Run& cells = run(count, strip);
    for (std::size_t i = cells.first; i < cells.end; ++i) {
      visit(i, shares_[cells.share + i - cells.first]);
    }
  }
}

}  // namespace twinround

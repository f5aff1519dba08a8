// Every choice of lots and every order of them, weighed by how far it gets: over the sets of lots,
// for how far a set gets is all that the next lot has to know.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "leftovers.h"
#include "lot_reach.h"

namespace twinround {

// `runs`, `reaches` and `joins_inside` of Leftovers; the rest is lay_leftovers'.
class LotSearch {
 public:
  // `in_order`: only so that lots follow each other as they were told. At most kMostLots halves;
  // both outlive this.
  LotSearch(const LotReach& reach, const std::vector<Length>& halves, bool in_order);

  Leftovers run();

  // Where a further yarn would begin in a sock that the lots do not finish; after run().
  int missing_from() const { return missing_from_; }

 private:
  // How far some of the lots get, with so many joins within toe or cuff, and by which step.
  struct Got {
    std::int16_t round = -1;
    std::int16_t lot = -1;  // the last one, or one that is left out
    bool is_left_out = false;
    std::int16_t inside_before = 0;
  };
  struct Choice {
    unsigned set = 0;
    int inside = 0;
  };

  int lots() const { return static_cast<int>(halves_.size()); }
  Got& got(unsigned set, int inside) {
    return got_[set * (halves_.size() + 1) + static_cast<std::size_t>(inside)];
  }
  int on(int lot, int done);
  void improve(unsigned set, int inside, int round, int lot, bool is_left_out, int inside_before);
  void weigh(unsigned set);
  std::optional<Choice> best_at_edge(int used);
  int farthest_inside(unsigned set);
  void add_run(Leftovers& found, int lot, int done, int to, bool bind_off) const;
  Leftovers told(unsigned set, int inside, bool reaches);
  unsigned before_last(unsigned every, int lot) const;
  int last_bound_off(Length half, int done) const;
  Leftovers short_sock(unsigned every);

  const LotReach& reach_;
  const std::vector<Length>& halves_;
  bool in_order_;
  std::vector<Got> got_;          // of every set of lots, by joins within toe or cuff
  std::vector<std::int16_t> on_;  // LotReach::on of every lot from every round, once asked for
  int missing_from_ = 0;
};

}  // namespace twinround

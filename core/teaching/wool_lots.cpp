#include "wool_lots.h"

#include <algorithm>
#include <numeric>

#include "rounding.h"

namespace twinround {

namespace {

constexpr int kMostWays = 20000;

using Counts = std::vector<int>;

int pairs_in(Length left, Length yarn) {
  return floor_count(left / yarn);
}

// Fills lots with so many pairs of each size, if there is a way.
class Filling {
 public:
  Filling(const std::vector<Length>& lots, const std::vector<PairsWanted>& wanted,
          std::vector<std::size_t> longest_first)
      : left_(lots),
        wanted_(wanted),
        order_(std::move(longest_first)),
        made_(lots.size(), Counts(wanted.size())) {}

  bool fill(Counts counts) {
    counts_ = std::move(counts);
    return cannot() ? false : place(0, 0);
  }
  bool gave_up() const { return ways_ > kMostWays; }
  const std::vector<Counts>& made() const { return made_; }
  const std::vector<Length>& left() const { return left_; }

 private:
  bool cannot() const;
  bool place(std::size_t at, std::size_t lot);

  std::vector<Length> left_;
  const std::vector<PairsWanted>& wanted_;
  std::vector<std::size_t> order_;
  std::vector<Counts> made_;
  Counts counts_;  // still to place
  int ways_ = 0;
};

// More pairs of this length or longer than the lots hold of this length, or more metres in all.
bool Filling::cannot() const {
  int longer = 0;
  Length need;
  for (const std::size_t size : order_) {
    if (counts_[size] == 0) continue;
    longer += counts_[size];
    need = need + counts_[size] * wanted_[size].yarn;
    int room = 0;
    for (const Length left : left_) room += pairs_in(left, wanted_[size].yarn);
    if (room < longer) return true;
  }
  const Length all = std::accumulate(left_.begin(), left_.end(), Length());
  return !at_least(all.m(), need.m());
}

// The pairs of the size at `at` in the order, into this lot and those after it.
bool Filling::place(std::size_t at, std::size_t lot) {
  if (at == order_.size()) return true;
  const std::size_t size = order_[at];
  if (counts_[size] == 0) return !cannot() && place(at + 1, 0);
  if (lot == left_.size() || ++ways_ > kMostWays) return false;
  const Length yarn = wanted_[size].yarn;
  int most = std::min(counts_[size], pairs_in(left_[lot], yarn));
  // Of lots with as much left a later one takes no more than an earlier: it would be the same way
  // again.
  for (std::size_t other = 0; other < lot; ++other) {
    const Length other_before = left_[other] + made_[other][size] * yarn;
    if (other_before == left_[lot]) most = std::min(most, made_[other][size]);
  }
  const Length before = left_[lot];
  for (int pairs = most; pairs >= 0; --pairs) {
    left_[lot] = before - pairs * yarn;
    made_[lot][size] = pairs;
    counts_[size] -= pairs;
    if (place(at, lot + 1)) return true;
    counts_[size] += pairs;
    made_[lot][size] = 0;
    left_[lot] = before;
    if (gave_up()) return false;
  }
  return false;
}

// The first `number` pairs of the sizes in this order.
Counts first_pairs(const std::vector<PairsWanted>& wanted, const std::vector<std::size_t>& order,
                   int number) {
  Counts counts(wanted.size());
  for (const std::size_t size : order) {
    counts[size] = std::min(number, wanted[size].pairs);
    number -= counts[size];
  }
  return counts;
}

void lengthen(LotShare& lot, Counts& unmade, const std::vector<PairsWanted>& wanted,
              const std::vector<std::size_t>& longest_first) {
  for (std::size_t i = longest_first.size(); i-- > 0;) {
    const std::size_t shorter = longest_first[i];
    for (std::size_t j = 0; j < i; ++j) {
      const std::size_t longer = longest_first[j];
      const Length more = wanted[longer].yarn - wanted[shorter].yarn;
      while (lot.pairs[shorter] > 0 && unmade[longer] > 0 && at_least(lot.left.m(), more.m())) {
        --lot.pairs[shorter];
        ++unmade[shorter];
        ++lot.pairs[longer];
        --unmade[longer];
        lot.left = lot.left - more;
      }
    }
  }
}

}  // namespace

LotsMake pairs_from(const std::vector<Length>& lots, const std::vector<PairsWanted>& wanted) {
  std::vector<std::size_t> order;  // longest pairs first
  for (std::size_t size = 0; size < wanted.size(); ++size) {
    auto place = order.end();
    while (place != order.begin() && wanted[size].yarn > wanted[*(place - 1)].yarn) --place;
    order.insert(place, size);
  }
  const std::vector<std::size_t> shortest_first(order.rbegin(), order.rend());

  LotsMake make;
  int number = 0;
  Counts unmade;
  for (const PairsWanted& size : wanted) {
    number += size.pairs;
    unmade.push_back(size.pairs);
  }
  for (;; --number) {
    Filling filling(lots, wanted, order);
    const bool fits = filling.fill(first_pairs(wanted, shortest_first, number));
    if (fits || filling.gave_up()) make.at_most = std::max(make.at_most, number);
    if (!fits) continue;
    for (std::size_t i = 0; i < lots.size(); ++i) {
      make.lots.push_back({{}, filling.made()[i], filling.left()[i]});
    }
    break;  // no pair at all always fits
  }
  make.in_all = number;
  make.pairs.resize(wanted.size());
  for (std::size_t i = 0; i < lots.size(); ++i) {
    for (std::size_t size = 0; size < wanted.size(); ++size) {
      unmade[size] -= make.lots[i].pairs[size];
      make.lots[i].alone.push_back(pairs_in(lots[i], wanted[size].yarn));
    }
  }
  for (LotShare& lot : make.lots) {
    lengthen(lot, unmade, wanted, order);
    for (std::size_t size = 0; size < wanted.size(); ++size) make.pairs[size] += lot.pairs[size];
  }
  return make;
}

}  // namespace twinround

#include "size_shares.h"

#include <algorithm>
#include <cmath>

namespace twinround {

namespace {

constexpr double kBandTail = 0.05;

class Counter {
 public:
  Counter(const CoverTable& table, const SockMake& make, const std::vector<int>& candidates)
      : table_(table),
        make_(make),
        candidates_(candidates),
        shares_(candidates.size()),
        by_strip_(candidates.size(), std::vector<double>(table.reaches.empty() ? 0 : strips())) {}

  std::vector<SizeShare> count() {
    for (std::size_t strip = 0; strip < strips(); ++strip) {
      const auto end = static_cast<std::size_t>(table_.strips[strip + 1]);
      for (auto cell = static_cast<std::size_t>(table_.strips[strip]); cell < end; ++cell) {
        count_cell(strip, cell);
      }
    }
    for (std::size_t i = 0; i < shares_.size(); ++i) {
      shares_[i].lengths = {percentile(i, kBandTail), percentile(i, 1 - kBandTail)};
    }
    return std::move(shares_);
  }

 private:
  std::size_t strips() const { return table_.strips.size() - 1; }
  void count_cell(std::size_t strip, std::size_t cell);
  double misfit(int candidate, const FootCell& cell) const;
  Length percentile(std::size_t size, double share) const;

  const CoverTable& table_;
  const SockMake& make_;
  const std::vector<int>& candidates_;
  std::vector<SizeShare> shares_;
  std::vector<std::vector<double>> by_strip_;
};

double Counter::misfit(int candidate, const FootCell& cell) const {
  constexpr double kBestStretch = 1 / 0.9;
  const Length tube = tube_girth(make_, table_.counts[table_.count_of(candidate)]);
  const Length sock = sock_length(make_, table_.feet[table_.foot_of(candidate)]);
  const double round = std::log(cell.ball / (kBestStretch * tube));
  const double along = std::log(sock_length(make_, cell.length) / sock);
  return round * round + along * along;
}

void Counter::count_cell(std::size_t strip, std::size_t cell) {
  struct Serving {
    std::size_t size;
    double share;
    double misfit;
  };
  std::vector<Serving> serving;
  const FootCell& feet = table_.cells[cell];
  for (std::size_t i = 0; i < candidates_.size(); ++i) {
    const Reach& reach = table_.reaches[table_.foot_of(candidates_[i])];
    const double share = table_.served[table_.count_of(candidates_[i])][cell];
    const int at = static_cast<int>(strip);
    if (at < reach.first || at >= reach.end || share <= 0) continue;
    const Serving one = {i, share, misfit(candidates_[i], feet)};
    auto place = serving.end();
    while (place != serving.begin() && one.misfit < (place - 1)->misfit) --place;
    serving.insert(place, one);  // best fit first
    shares_[i].serves += feet.weight * share;
  }
  double served = 0;
  for (const Serving& one : serving) {
    const double more = feet.weight * std::max(0.0, one.share - served);
    served = std::max(served, one.share);
    shares_[one.size].counted += more;
    shares_[one.size].by_body[static_cast<std::size_t>(feet.body)] += more;
    by_strip_[one.size][strip] += more;
  }
}

// Within a strip feet lie evenly enough.
Length Counter::percentile(std::size_t size, double share) const {
  double left = share * shares_[size].counted;
  for (std::size_t strip = 0; strip < strips(); ++strip) {
    const double here = by_strip_[size][strip];
    const Length from = table_.strip_edges[strip];
    if (here > 0 && here >= left) {
      return from + (left / here) * (table_.strip_edges[strip + 1] - from);
    }
    left -= here;
  }
  return table_.strip_edges.back();
}

}  // namespace

std::vector<SizeShare> size_shares(const CoverTable& table, const SockMake& make,
                                   const std::vector<int>& candidates) {
  return Counter(table, make, candidates).count();
}

}  // namespace twinround

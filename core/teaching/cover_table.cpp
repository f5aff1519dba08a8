#include "cover_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "rounding.h"
#include "stitch_count.h"

namespace twinround {

namespace {

constexpr Length kFootStep = Length::from_mm(5);    // ISO 9407
constexpr Length kGirthStep = Length::from_mm(5);   // least between two candidate tubes. ASSUMPTION
constexpr double kTail = 4.5;                       // standard deviations: 7 feet in a million
constexpr Length kWidestCell = Length::from_mm(5);  // in length and in ball girth
constexpr double kLeastWeight = 1e-9;               // a cell with fewer feet is left out

// Gauss and Legendre's three points on -1 to 1.
constexpr std::array<double, 3> kNodes = {-0.7745966692414834, 0, 0.7745966692414834};
constexpr std::array<double, 3> kNodeShares = {5.0 / 18, 8.0 / 18, 5.0 / 18};

// Share of a normal curve below z deviations.
double below(double z) {
  return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

double height_at(const LengthCurve& curve, double mm) {
  const double z = (mm - curve.mean.mm()) / curve.sd.mm();
  return curve.weight * std::exp(-0.5 * z * z) / (curve.sd.mm() * std::sqrt(2 * std::numbers::pi));
}

struct Span {
  double from = 0;
  double to = 0;
};

void widen(Span& span, double from, double to) {
  const bool begun = span.to > 0;
  span.from = begun ? std::min(span.from, from) : from;
  span.to = std::max(span.to, to);
}

Span lengths_of(const BodyFeet& feet) {
  Span span;
  for (const LengthCurve& curve : feet.lengths) {
    const double reach = kTail * curve.sd.mm();
    widen(span, curve.mean.mm() - reach, curve.mean.mm() + reach);
  }
  return span;
}

// The ball girths of a body's feet of that length.
Span balls_of(const BodyFeet& feet, double length_mm) {
  const Length mean = feet.ball.mean(Length::from_mm(length_mm), Length::from_mm(0));
  const double reach = kTail * feet.ball.sd(mean).mm();
  return {mean.mm() - reach, mean.mm() + reach};
}

// Between `ends`, all `edges` that lie there, and so many more that no cell is too wide.
std::vector<double> cuts(std::vector<double> edges, const Span& ends) {
  edges.push_back(ends.from);
  edges.push_back(ends.to);
  std::sort(edges.begin(), edges.end());
  std::vector<double> all;
  for (const double edge : edges) {
    if (edge < ends.from || edge > ends.to) continue;
    if (!all.empty()) {
      const double last = all.back();
      if (!clearly_above(edge, last)) continue;
      const int parts = ceil_count((edge - last) / kWidestCell.mm());
      for (int i = 1; i < parts; ++i) all.push_back(last + (edge - last) * i / parts);
    }
    all.push_back(edge);
  }
  return all;
}

class Maker {
 public:
  Maker(const std::vector<BodyFeet>& bodies, const SockMake& make, int repeat)
      : bodies_(bodies), make_(make) {
    for (const BodyFeet& feet : bodies) {
      const Span lengths = lengths_of(feet);
      widen(lengths_, lengths.from, lengths.to);
      widen(balls_, balls_of(feet, lengths.from).from, balls_of(feet, lengths.to).to);
    }
    choose_counts(repeat);
    choose_feet();
  }

  CoverTable table() {
    if (table_.counts.empty() || table_.feet.empty()) return {};
    cut_cells();
    for (const Stitches n : table_.counts) table_.served.push_back(served_by(n));
    return std::move(table_);
  }

 private:
  void choose_counts(int repeat);
  void choose_feet();
  void cut_cells();
  void cut_strip(const BodyFeet& feet, const Span& strip, const std::vector<double>& balls);
  std::vector<double> served_by(Stitches n) const;

  const std::vector<BodyFeet>& bodies_;
  const SockMake& make_;
  CoverTable table_;
  Span lengths_, balls_;  // of all feet
};

// A tube that even the smallest ball fills serves no less than any smaller one; one wider than the
// largest ball serves nobody.
void Maker::choose_counts(int repeat) {
  const int apart = ceil_count(kGirthStep * make_.gauge);
  const int step = count_step(repeat) * ceil_count(static_cast<double>(apart) / count_step(repeat));
  const auto count_for = [&](double ball) {
    return step * floor_count(Length::from_mm(ball) * make_.gauge / step);
  };
  for (int n = count_for(balls_.from); n <= count_for(balls_.to); n += step) {
    if (is_count(n, repeat)) table_.counts.push_back(Stitches(n));
  }
}

// From the longest sock that the shortest foot still fills to the shortest that still serves the
// longest foot, or the other way round where one does both: beyond either end nothing is gained.
void Maker::choose_feet() {
  const auto foot = [](int steps) { return kFootStep * steps; };
  const int shortest = ceil_count(lengths_.from / kFootStep.mm());
  const int longest = ceil_count(lengths_.to / kFootStep.mm());
  int fills = shortest;
  while (fills < longest && lengths_served(make_, foot(fills + 1)).from.mm() <= lengths_.from) {
    ++fills;
  }
  int reaches = shortest;
  while (reaches < longest && lengths_served(make_, foot(reaches)).to.mm() < lengths_.to) ++reaches;
  for (int at = std::min(fills, reaches); at <= std::max(fills, reaches); ++at) {
    table_.feet.push_back(foot(at));
  }
}

void Maker::cut_cells() {
  std::vector<double> edges;
  for (const Length foot : table_.feet) {
    const LengthBand band = lengths_served(make_, foot);
    edges.push_back(band.from.mm());
    edges.push_back(band.to.mm());
  }
  edges = cuts(edges, lengths_);
  std::vector<double> balls;
  for (const Stitches n : table_.counts) {
    balls.push_back(kLeastStretch * tube_girth(make_, n).mm());
    balls.push_back(kMostStretch * tube_girth(make_, n).mm());
  }
  balls = cuts(balls, balls_);

  for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
    table_.strips.push_back(static_cast<int>(table_.cells.size()));
    for (const BodyFeet& feet : bodies_) cut_strip(feet, {edges[i], edges[i + 1]}, balls);
  }
  table_.strips.push_back(static_cast<int>(table_.cells.size()));
  for (const double edge : edges) table_.strip_edges.push_back(Length::from_mm(edge));
  for (const Length foot : table_.feet) {
    const LengthBand band = lengths_served(make_, foot);
    const auto strips_below = [&](double mm) {
      const auto at = std::lower_bound(edges.begin(), edges.end() - 1, mm - kTie);
      return static_cast<int>(at - edges.begin());
    };
    table_.reaches.push_back({strips_below(band.from.mm()), strips_below(band.to.mm())});
  }
}

void Maker::cut_strip(const BodyFeet& feet, const Span& strip, const std::vector<double>& balls) {
  const double half = (strip.to - strip.from) / 2;
  const double middle = strip.from + half;
  std::vector<double> weights(balls.size() - 1);
  std::vector<double> moments(balls.size() - 1);
  for (std::size_t node = 0; node < kNodes.size(); ++node) {
    const double length = middle + half * kNodes[node];
    double share = 0;
    for (const LengthCurve& curve : feet.lengths) share += height_at(curve, length);
    share *= 2 * half * kNodeShares[node];
    if (share < kLeastWeight) continue;
    const Length mean = feet.ball.mean(Length::from_mm(length), Length::from_mm(0));
    const double sd = feet.ball.sd(mean).mm();
    double last = below((balls.front() - mean.mm()) / sd);
    for (std::size_t i = 0; i < weights.size(); ++i) {
      const double next = below((balls[i + 1] - mean.mm()) / sd);
      weights[i] += share * (next - last);
      moments[i] += share * (next - last) * length;
      last = next;
    }
  }
  for (std::size_t i = 0; i < weights.size(); ++i) {
    if (weights[i] < kLeastWeight) continue;
    table_.cells.push_back({weights[i], Length::from_mm(moments[i] / weights[i]),
                            Length::from_mm((balls[i] + balls[i + 1]) / 2), feet.body});
  }
}

std::vector<double> Maker::served_by(Stitches n) const {
  const Length tube = tube_girth(make_, n);
  const Length passes = heel_passed(make_, n);
  std::vector<double> shares;
  shares.reserve(table_.cells.size());
  for (const FootCell& cell : table_.cells) {
    const bool in_reach = cell.ball >= kLeastStretch * tube && cell.ball <= kMostStretch * tube;
    double share = 0;
    for (const BodyFeet& feet : bodies_) {
      if (!in_reach || feet.body != cell.body) continue;
      const Length heel = feet.heel.mean(cell.length, cell.ball);
      share = below((passes - heel) / feet.heel.sd(heel));
    }
    shares.push_back(share);
  }
  return shares;
}

}  // namespace

CoverTable cover_table(const std::vector<BodyFeet>& feet, const SockMake& make, int repeat) {
  return Maker(feet, make, repeat).table();
}

}  // namespace twinround

#include "leftovers.h"

#include <algorithm>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <optional>

#include "lot_reach.h"

namespace twinround {
namespace {

constexpr std::int8_t kNowhere = -1;

// How far some of the lots get, with so many joins within toe or cuff, and by which step.
struct Got {
  std::int16_t round = kNowhere;
  std::int8_t lot = kNowhere;  // the last one, or one that is left out
  bool is_left_out = false;
  std::int8_t inside_before = 0;
};

class Search {
 public:
  Search(const LotReach& reach, const std::vector<Length>& halves)
      : reach_(reach),
        halves_(halves),
        got_((std::size_t{1} << halves.size()) * (halves.size() + 1)) {
    got(0, 0).round = 0;
  }

  // Fewest lots first: who reaches the edge first has the fewest joins.
  Leftovers run() {
    const int lots = static_cast<int>(halves_.size());
    const unsigned every = (1U << lots) - 1;
    for (int used = 1; used <= lots; ++used) {
      for (unsigned set = 1; set <= every; ++set) {
        if (std::popcount(set) == used) weigh(set);
      }
      if (const auto best = best_at_edge(used)) return told(best->set, best->inside, true);
    }
    return short_sock(every);
  }

  // Where a further yarn would begin in a sock that the lots do not finish.
  int missing_from() const { return missing_from_; }

 private:
  struct Choice {
    unsigned set = 0;
    int inside = 0;
  };

  Got& got(unsigned set, int inside) {
    return got_[set * (halves_.size() + 1) + static_cast<std::size_t>(inside)];
  }
  int lots() const { return static_cast<int>(halves_.size()); }

  void improve(unsigned set, int inside, int round, int lot, bool is_left_out, int inside_before) {
    Got& here = got(set, inside);
    if (round <= here.round) return;
    here = {static_cast<std::int16_t>(round), static_cast<std::int8_t>(lot), is_left_out,
            static_cast<std::int8_t>(inside_before)};
  }

  void weigh(unsigned set) {
    for (int lot = 0; lot < lots(); ++lot) {
      if ((set & (1U << lot)) == 0) continue;
      const unsigned before = set & ~(1U << lot);
      // As far with fewer joins inside is never worse.
      int beaten = kNowhere;
      for (int inside = 0; inside <= lots(); ++inside) {
        const int done = got(before, inside).round;
        if (done <= beaten) continue;
        beaten = done;
        improve(set, inside, done, lot, true, inside);
        int to = reach_.on(halves_[static_cast<std::size_t>(lot)], done);
        if (to > done && reach_.is_inside(to) && inside < lots()) {
          improve(set, inside + 1, to, lot, false, inside);
        }
        while (to > done && reach_.is_inside(to)) --to;
        if (to > done) improve(set, inside, to, lot, false, inside);
      }
    }
  }

  std::optional<Choice> best_at_edge(int used) {
    for (int inside = 0; inside <= lots(); ++inside) {
      for (unsigned set = 1; set < (1U << lots()); ++set) {
        if (std::popcount(set) != used) continue;
        if (got(set, inside).round == reach_.all()) return Choice{set, inside};
      }
    }
    return std::nullopt;
  }

  int farthest_inside(unsigned set) {
    int best = 0;
    for (int inside = 1; inside <= lots(); ++inside) {
      if (got(set, inside).round > got(set, best).round) best = inside;
    }
    return best;
  }

  // The runs that got there, walked backwards.
  Leftovers told(unsigned set, int inside, bool reaches) {
    Leftovers found;
    while (set != 0) {
      const Got step = got(set, inside);
      set &= ~(1U << step.lot);
      inside = step.inside_before;
      if (step.is_left_out) continue;
      add_run(found, step.lot, got(set, inside).round, step.round,
              reaches && step.round == reach_.all());
    }
    std::reverse(found.runs.begin(), found.runs.end());
    found.reaches = reaches;
    return found;
  }

  void add_run(Leftovers& found, int lot, int done, int to, bool bind_off) {
    found.runs.push_back({lot, done + 1, to, reach_.yarn(done, to, bind_off)});
  }

  // As many rounds as there can be with one lot kept for the last of them and the bind-off.
  Leftovers short_sock(unsigned every) {
    int most = 0;
    int last = kNowhere;
    for (int lot = 0; lot < lots(); ++lot) {
      const unsigned before = every & ~(1U << lot);
      const int done = got(before, farthest_inside(before)).round;
      const Length half = halves_[static_cast<std::size_t>(lot)];
      const int to = reach_.farthest(half, done, reach_.all(), true);
      if (to > done && to > most) {
        most = to;
        last = lot;
      }
    }
    Leftovers found;
    if (last != kNowhere) {
      const unsigned before = every & ~(1U << last);
      const int inside = farthest_inside(before);
      found = told(before, inside, false);
      add_run(found, last, got(before, inside).round, most, true);
    }
    missing_from_ = got(every, farthest_inside(every)).round;
    return found;
  }

  const LotReach& reach_;
  const std::vector<Length>& halves_;
  std::vector<Got> got_;  // of every set of lots, by joins within toe or cuff
  int missing_from_ = 0;
};

LotMakes makes_of(const YarnCourse& course, const LotReach& reach, Length half) {
  LotMakes makes;
  makes.half = half;
  int done = 0;
  for (int to = 1; to <= reach.all(); ++to) {
    const Section section = course.rounds[static_cast<std::size_t>(to - 1)].section;
    const bool goes_on =
        to < reach.all() && course.rounds[static_cast<std::size_t>(to)].section == section;
    if (goes_on) continue;
    const bool does = reach.does(half, done, to, to == reach.all());
    if (section == Section::toe) makes.toe = does;
    if (section == Section::spiral) makes.spiral = does;
    if (section == Section::widening) makes.widening = does;
    if (section == Section::cuff) makes.cuff = does;
    done = to;
  }
  return makes;
}

}  // namespace

Leftovers lay_leftovers(const YarnCourse& course, const LeftoversInput& input) {
  const LotReach reach(course, input.margin);
  std::vector<Length> halves;
  for (const Length lot : input.lots) halves.push_back(lot / 2);
  Search search(reach, halves);
  Leftovers found = search.run();
  for (const Length half : halves) found.lots.push_back(makes_of(course, reach, half));
  if (!found.runs.empty()) {
    found.rounds = found.runs.back().to;
    found.joins = static_cast<int>(found.runs.size()) - 1;
    for (const LotRun& run : found.runs) found.joins_inside += reach.is_inside(run.to) ? 1 : 0;
    if (!found.reaches) found.joins_inside -= reach.is_inside(found.rounds) ? 1 : 0;
  }
  if (!found.reaches) {
    const Length more = reach.yarn(search.missing_from(), reach.all(), true);
    found.missing = more * (2 * (1 + input.margin));
  }
  return found;
}

}  // namespace twinround

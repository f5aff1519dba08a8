#include "lot_search.h"

#include <algorithm>
#include <bit>

namespace twinround {
namespace {

constexpr int kNowhere = -1;

}  // namespace

LotSearch::LotSearch(const LotReach& reach, const std::vector<Length>& halves, bool in_order)
    : reach_(reach),
      halves_(halves),
      in_order_(in_order),
      got_((std::size_t{1} << halves.size()) * (halves.size() + 1)),
      on_(halves.size() * static_cast<std::size_t>(reach.all() + 1), kNowhere) {
  got(0, 0).round = 0;
}

// Fewest lots first: who reaches the edge first has the fewest joins.
Leftovers LotSearch::run() {
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

int LotSearch::on(int lot, int done) {
  const std::size_t rounds = static_cast<std::size_t>(reach_.all()) + 1;
  std::int16_t& to = on_[static_cast<std::size_t>(lot) * rounds + static_cast<std::size_t>(done)];
  if (to == kNowhere) {
    to = static_cast<std::int16_t>(reach_.on(halves_[static_cast<std::size_t>(lot)], done));
  }
  return to;
}

void LotSearch::improve(unsigned set, int inside, int round, int lot, bool is_left_out,
                        int inside_before) {
  Got& here = got(set, inside);
  if (round <= here.round) return;
  here = {static_cast<std::int16_t>(round), static_cast<std::int16_t>(lot), is_left_out,
          static_cast<std::int16_t>(inside_before)};
}

void LotSearch::weigh(unsigned set) {
  for (int lot = 0; lot < lots(); ++lot) {
    if ((set & (1U << lot)) == 0) continue;
    const unsigned before = set & ~(1U << lot);
    if (in_order_ && before >> lot != 0) continue;
    // As far with fewer joins inside is never worse.
    int beaten = kNowhere;
    for (int inside = 0; inside <= lots(); ++inside) {
      const int done = got(before, inside).round;
      if (done <= beaten) continue;
      beaten = done;
      improve(set, inside, done, lot, true, inside);
      int to = on(lot, done);
      if (to > done && reach_.is_inside(to) && inside < lots()) {
        improve(set, inside + 1, to, lot, false, inside);
      }
      while (to > done && reach_.is_inside(to)) --to;
      if (to > done) improve(set, inside, to, lot, false, inside);
    }
  }
}

std::optional<LotSearch::Choice> LotSearch::best_at_edge(int used) {
  for (int inside = 0; inside <= lots(); ++inside) {
    for (unsigned set = 1; set < (1U << lots()); ++set) {
      if (std::popcount(set) != used) continue;
      if (got(set, inside).round == reach_.all()) return Choice{set, inside};
    }
  }
  return std::nullopt;
}

int LotSearch::farthest_inside(unsigned set) {
  int best = 0;
  for (int inside = 1; inside <= lots(); ++inside) {
    if (got(set, inside).round > got(set, best).round) best = inside;
  }
  return best;
}

// The runs that got there, walked backwards.
Leftovers LotSearch::told(unsigned set, int inside, bool reaches) {
  Leftovers found;
  found.reaches = reaches;
  found.joins_inside = inside;
  while (set != 0) {
    const Got step = got(set, inside);
    set &= ~(1U << step.lot);
    inside = step.inside_before;
    if (step.is_left_out) continue;
    add_run(found, step.lot, got(set, inside).round, step.round, step.round == reach_.all());
  }
  std::reverse(found.runs.begin(), found.runs.end());
  return found;
}

void LotSearch::add_run(Leftovers& found, int lot, int done, int to, bool bind_off) const {
  found.runs.push_back({lot, done + 1, to, reach_.yarn(done, to, bind_off)});
}

unsigned LotSearch::before_last(unsigned every, int lot) const {
  return in_order_ ? (1U << lot) - 1 : every & ~(1U << lot);
}

// The last round that a lot still binds off behind, the others having got to `done`; where it
// does not make the next one it takes over earlier, where rounds have fewer stitches.
int LotSearch::last_bound_off(Length half, int done) const {
  int to = reach_.farthest(half, done, reach_.all(), true);
  if (to > done) return to;
  while (to > 0 && !reach_.does(half, to - 1, to, true)) --to;
  return to;
}

// As many rounds as there can be with one lot kept for the last of them and the bind-off.
Leftovers LotSearch::short_sock(unsigned every) {
  int most = 0;
  int last = kNowhere;
  for (int lot = 0; lot < lots(); ++lot) {
    const unsigned before = before_last(every, lot);
    const int done = got(before, farthest_inside(before)).round;
    const int to = last_bound_off(halves_[static_cast<std::size_t>(lot)], done);
    if (to > most) {
      most = to;
      last = lot;
    }
  }
  missing_from_ = got(every, farthest_inside(every)).round;
  if (last == kNowhere) return {};
  const unsigned before = before_last(every, last);
  Leftovers found = told(before, farthest_inside(before), false);
  // The last lot makes a round at least.
  while (!found.runs.empty() && found.runs.back().to >= most) {
    LotRun& run = found.runs.back();
    run.to = most - 1;
    run.yarn = reach_.yarn(run.from - 1, run.to, false);
    if (run.to < run.from) found.runs.pop_back();
  }
  add_run(found, last, found.runs.empty() ? 0 : found.runs.back().to, most, true);
  found.joins_inside = 0;
  for (const LotRun& run : found.runs) {
    found.joins_inside += run.to < most && reach_.is_inside(run.to) ? 1 : 0;
  }
  return found;
}

}  // namespace twinround

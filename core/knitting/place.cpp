#include "place.h"

#include <algorithm>
#include <numeric>

#include "rounding.h"

namespace twinround {
namespace {

struct Round {
  Section section = Section::toe;
  int stitches = 0;
  int before = 0;  // stitches before it
  int line = 0;
  bool is_rib() const { return section == Section::spiral || section == Section::widening; }
  bool grows() const { return stitches > before; }
};

std::vector<Round> round_by_round(const SockInMaking& sock) {
  std::vector<Round> rounds;
  // The stitches cast on are told as their yarn.
  int before = round_half_up(sock.cast_on / sock.loop);
  for (const RoundSpan& span : sock.rounds) {
    for (int i = 0; i < span.rounds; ++i) {
      rounds.push_back({span.section, span.stitches, before, span.line});
      before = span.stitches;
    }
  }
  return rounds;
}

// Rounds between two moves of the rib; 0 for a rib that is seen to move nowhere. A move cannot be
// seen beside a widening round, which changes every line; all that are seen lie at multiples.
int rounds_per_shift(const std::vector<Round>& rounds, int first_of_rib) {
  int step = 0;
  for (int r = first_of_rib + 1; r < static_cast<int>(rounds.size()); ++r) {
    const Round& above = rounds[static_cast<std::size_t>(r)];
    const Round& below = rounds[static_cast<std::size_t>(r) - 1];
    const bool comparable = above.is_rib() && !above.grows() && !below.grows();
    if (comparable && above.line != below.line) step = std::gcd(step, r - first_of_rib);
  }
  return step;
}

std::vector<Coming> what_comes(const std::vector<Round>& rounds, int done) {
  const auto rib = std::find_if(rounds.begin(), rounds.end(),
                                [](const Round& round) { return round.section != Section::toe; });
  const int first_of_rib = static_cast<int>(rib - rounds.begin());
  const int shift = rounds_per_shift(rounds, first_of_rib);
  std::vector<Coming> coming;
  const auto tell = [&](Event event, int r) {
    const bool known = std::any_of(coming.begin(), coming.end(),
                                   [&](const Coming& other) { return other.event == event; });
    if (!known) coming.push_back({event, r + 1, r - done});
  };
  for (int r = done; r < static_cast<int>(rounds.size()); ++r) {
    const Round& round = rounds[static_cast<std::size_t>(r)];
    if (round.section == Section::toe && round.grows()) tell(Event::increase, r);
    if (r == first_of_rib && round.is_rib()) tell(Event::rib, r);
    const bool moves = shift > 0 && r > first_of_rib && (r - first_of_rib) % shift == 0;
    if (round.is_rib() && moves) tell(Event::shift, r);
    if (r > first_of_rib && round.is_rib() && round.grows()) tell(Event::widening, r);
    const bool begins = r == 0 || rounds[static_cast<std::size_t>(r) - 1].section != Section::cuff;
    if (round.section == Section::cuff && begins) tell(Event::cuff, r);
  }
  tell(Event::bind_off, static_cast<int>(rounds.size()));
  return coming;
}

}  // namespace

int rounds_of(const SockInMaking& sock) {
  int rounds = 0;
  for (const RoundSpan& span : sock.rounds) rounds += span.rounds;
  return rounds;
}

Place place_of(const SockInMaking& sock, PairDone done) {
  const std::vector<Round> rounds = round_by_round(sock);
  const auto in_hand = static_cast<std::size_t>(done.rounds);
  Place place;
  place.all_done = in_hand == rounds.size();
  place.stitches = rounds[place.all_done ? in_hand - 1 : in_hand].stitches;
  place.rounds_to_go = static_cast<int>(rounds.size()) - done.rounds;

  int below = 0;  // stitches of one sock in the rounds that are done
  int all = 0;
  for (std::size_t r = 0; r < rounds.size(); ++r) {
    if (r < in_hand) below += rounds[r].stitches;
    all += rounds[r].stitches;
  }
  const int first_half = place.stitches / 2;
  const int second_half = place.stitches - first_half;
  const int of_a = below + (done.passes > 0 ? first_half : 0);
  const int of_b = below + (done.passes > 1 ? first_half : 0) + (done.passes > 2 ? second_half : 0);
  const auto yarn = [&](int worked) {
    const Length tail = sock.tails / 2.0;
    return YarnOfSock{sock.cast_on + tail + sock.loop * worked,
                      sock.loop * (all - worked) + sock.bind_off + tail};
  };
  place.a = yarn(of_a);
  place.b = yarn(of_b);
  place.worked = of_a + of_b;
  place.to_go = 2 * all - place.worked;
  place.next = what_comes(rounds, done.rounds);
  return place;
}

}  // namespace twinround

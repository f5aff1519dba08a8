#include "line.h"

#include <cstddef>

namespace twinround {

namespace {

Work seen_from_the_other_end(Work work) {
  if (work == Work::make_one_left) return Work::make_one_right;
  if (work == Work::make_one_right) return Work::make_one_left;
  return work;
}

// How many times over the pair of runs at `start` is worked without a break.
int times_paired(const HalfLine& half, std::size_t start) {
  int times = 0;
  for (std::size_t at = start; at + 1 < half.size(); at += 2, ++times) {
    if (half[at] != half[start] || half[at + 1] != half[start + 1]) break;
  }
  return times;
}

}  // namespace

void append_run(HalfLine& half, Work work, int times) {
  if (times <= 0) return;
  if (!half.empty() && half.back().work == work) {
    half.back().times += times;
  } else {
    half.push_back({work, times});
  }
}

HalfLine read_backwards(const HalfLine& half) {
  HalfLine turned(half.rbegin(), half.rend());
  for (Run& run : turned) run.work = seen_from_the_other_end(run.work);
  return turned;
}

Stitches stitches_after(const HalfLine& half) {
  int stitches = 0;
  // Every kind of work leaves one loop on the needle; an increase makes its loop from none.
  for (const Run& run : half) stitches += run.times;
  return Stitches(stitches);
}

std::vector<Phrase> fold_repeats(const HalfLine& half) {
  std::size_t best_start = 0;
  int best_times = 1;
  for (std::size_t start = 0; start < half.size(); ++start) {
    const int times = times_paired(half, start);
    // Strictly more: of two equal folds the earlier one stands, as a knitter meets it first. A fold
    // that begins with a knit run is preferred to one a run earlier that does not, because ribs are
    // named from the knit.
    const bool better = times > best_times ||
                        (times == best_times && times > 1 && start == best_start + 1 &&
                         half[start].work == Work::knit && half[best_start].work != Work::knit);
    if (better) {
      best_start = start;
      best_times = times;
    }
  }
  if (best_times < 2) return {Phrase{half, 1}};

  const std::size_t best_end = best_start + 2 * static_cast<std::size_t>(best_times);
  const auto at = [&half](std::size_t i) { return half.begin() + static_cast<std::ptrdiff_t>(i); };
  std::vector<Phrase> phrases;
  if (best_start > 0) phrases.push_back({{half.begin(), at(best_start)}, 1});
  phrases.push_back({{at(best_start), at(best_start + 2)}, best_times});
  if (best_end < half.size()) phrases.push_back({{at(best_end), half.end()}, 1});
  return phrases;
}

}  // namespace twinround

#include "stitch_count.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "rounding.h"
#include "tube.h"

namespace twinround {

namespace {

bool ease_is_near(Stitches n, const CountInput& input) {
  const double off = std::abs(ease_of(n, input.ball_girth, input.gauge) - input.girth_ease);
  return at_least(kEaseTolerance, off);
}

bool passes_heel(Stitches n, const CountInput& input) {
  return at_least(kPassUse, girth_use(input.heel_girth, n, input.widest_stitch));
}

int least_count(int repeat) {
  return count_step(repeat) * ceil_count(static_cast<double>(kLeastCount) / count_step(repeat));
}

int most_count(int repeat) {
  return count_step(repeat) * floor_count(static_cast<double>(kMostCount) / count_step(repeat));
}

// The count the ease alone asks for; outside 8 to 400 where no count comes near it.
Stitches count_by_ease(const CountInput& input) {
  const double ideal = ideal_stitches(input);
  const Stitches alike(nearest_multiple(ideal, 2 * input.repeat, Tie::down));
  if (is_count(alike.value(), input.repeat) && ease_is_near(alike, input)) return alike;
  const Stitches nearest(nearest_multiple(ideal, count_step(input.repeat), Tie::down));
  // Just past either end of the range the last count may still serve; further out none does.
  const Stitches last(
      std::clamp(nearest.value(), least_count(input.repeat), most_count(input.repeat)));
  return ease_is_near(last, input) ? last : nearest;
}

Stitches raised_for_heel(Stitches from, const CountInput& input) {
  Stitches n = from;
  while (!passes_heel(n, input) && n.value() <= kMostCount) {
    n += Stitches(count_step(input.repeat));
  }
  return n;
}

// Refused with what would serve: the stitch gauges that bring this girth onto a count of this rib,
// and the small ribs that divide it as it is.
Problem out_of_range(Stitches count, const CountInput& input) {
  const double asked_girth = input.ball_girth.mm() * (1.0 + input.girth_ease);
  const int coarse = ceil_count(100.0 * least_count(input.repeat) / asked_girth);
  const int fine = floor_count(100.0 * most_count(input.repeat) / asked_girth);
  std::string ribs;
  for (const RibThatFits& rib : ribs_that_fit(input)) {
    ribs +=
        (ribs.empty() ? "k" : ", k") + std::to_string(rib.knit) + " p" + std::to_string(rib.purl);
  }
  Problem problem{"/foot/ballGirthMm", "count_out_of_range", {}, {}, ""};
  problem.numbers = {{"count", static_cast<double>(count.value())},
                     {"min", kLeastCount},
                     {"max", kMostCount},
                     {"coarsestPer100Mm", static_cast<double>(coarse)},
                     {"finestPer100Mm", static_cast<double>(fine)}};
  problem.message =
      "This gauge, girth and rib come to " + std::to_string(count.value()) +
      " stitches a round; 8 to 400 can be knit. Check the girth and the gauge and their "
      "units: for this girth a gauge of " +
      std::to_string(coarse) + " to " + std::to_string(fine) + " stitches over 100 mm would serve.";
  if (!ribs.empty()) {
    problem.words.push_back({"ribs", ribs});
    problem.message += " With this gauge these ribs would: " + ribs + ".";
  }
  return problem;
}

// The ease has its count; it is the heel that asks for more than can be knit.
Problem heel_out_of_reach(Stitches by_ease, const CountInput& input) {
  const int most = most_count(input.repeat);
  const Length passes = most * input.widest_stitch * kPassUse;
  Problem problem{"/foot/heelAnkleGirthMm", "heel_out_of_reach", {}, {}, ""};
  problem.numbers = {{"byEase", static_cast<double>(by_ease.value())},
                     {"max", static_cast<double>(most)},
                     {"heelMm", input.heel_girth.mm()},
                     {"passesMm", passes.mm()}};
  problem.message =
      "The ease asks for " + std::to_string(by_ease.value()) + " stitches, but even " +
      std::to_string(most) + " would not stretch over a heel of " +
      std::to_string(round_half_up(input.heel_girth.mm())) +
      " mm round. Check the heel and ankle girth, and the yarn in a stitch: gauge, weighed piece, "
      "stretched swatch.";
  return problem;
}

Problem not_a_count(int named, int repeat) {
  const int step = count_step(repeat);
  const double inside = std::clamp(named, kLeastCount, kMostCount);
  const int below = step * floor_count(inside / step);
  const int above = step * ceil_count(inside / step);
  Problem problem{"/stitchCount", "not_a_count", {{"given", static_cast<double>(named)}}, {}, ""};
  problem.message = "The rib repeats every " + std::to_string(repeat) +
                    " stitches, so the count is an even multiple of it from 8 to 400. The nearest:";
  // A nearest count on one side is all there is at the ends of the range.
  if (is_count(below, repeat)) {
    problem.numbers.push_back({"below", static_cast<double>(below)});
    problem.message += " " + std::to_string(below);
  }
  if (is_count(above, repeat) && above != below) {
    problem.numbers.push_back({"above", static_cast<double>(above)});
    problem.message += " " + std::to_string(above);
  }
  problem.message += ".";
  return problem;
}

// Nearest ease first; of two as near, the one that came first stays first.
void insert_by_ease(std::vector<RibThatFits>& ribs, const RibThatFits& rib, double asked) {
  const double off = std::abs(rib.ease - asked);
  std::size_t place = ribs.size();
  while (place > 0 && clearly_above(std::abs(ribs[place - 1].ease - asked), off)) --place;
  ribs.insert(ribs.begin() + static_cast<std::ptrdiff_t>(place), rib);
}

}  // namespace

int count_step(int repeat) {
  return repeat % 2 == 0 ? repeat : 2 * repeat;
}

bool is_count(int n, int repeat) {
  return n >= kLeastCount && n <= kMostCount && n % count_step(repeat) == 0;
}

bool halves_alike(Stitches n, int repeat) {
  return n.value() % (2 * repeat) == 0;
}

double ideal_stitches(const CountInput& input) {
  return input.ball_girth * (1.0 + input.girth_ease) * input.gauge;
}

Result<CountAdvice> advise_count(const CountInput& input) {
  CountAdvice advice;
  advice.by_ease = count_by_ease(input);
  if (!is_count(advice.by_ease.value(), input.repeat)) return out_of_range(advice.by_ease, input);
  advice.heel_use_by_ease = girth_use(input.heel_girth, advice.by_ease, input.widest_stitch);
  advice.count = raised_for_heel(advice.by_ease, input);
  if (!is_count(advice.count.value(), input.repeat)) {
    return heel_out_of_reach(advice.by_ease, input);
  }
  return advice;
}

bool count_is_good(Stitches n, const CountInput& input) {
  return ease_is_near(n, input) && passes_heel(n, input);
}

Result<Stitches> accept_count(int named, int repeat) {
  if (is_count(named, repeat)) return Stitches(named);
  return not_a_count(named, repeat);
}

std::vector<Stitches> counts_around(Stitches n, int repeat) {
  constexpr int kChoices = 5;
  const int step = count_step(repeat);
  const int least = least_count(repeat);
  const int most = most_count(repeat);
  int first = std::min(n.value() - 2 * step, most - (kChoices - 1) * step);
  first = std::max(first, least);
  std::vector<Stitches> counts;
  for (int count = first; count <= most && static_cast<int>(counts.size()) < kChoices;
       count += step) {
    counts.push_back(Stitches(count));
  }
  return counts;
}

std::vector<RibThatFits> ribs_that_fit(const CountInput& input) {
  constexpr int kWidestRun = 4;
  std::vector<RibThatFits> ribs;
  for (int knit = 1; knit <= kWidestRun; ++knit) {
    for (int purl = 1; purl <= kWidestRun; ++purl) {
      CountInput with_rib = input;
      with_rib.repeat = knit + purl;
      const Stitches n = count_by_ease(with_rib);
      if (!is_count(n.value(), with_rib.repeat)) continue;
      if (!count_is_good(n, with_rib)) continue;
      insert_by_ease(ribs, {knit, purl, n, ease_of(n, input.ball_girth, input.gauge)},
                     input.girth_ease);
    }
  }
  return ribs;
}

}  // namespace twinround

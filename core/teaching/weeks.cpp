#include "weeks.h"

#include <algorithm>
#include <cstddef>

#include "pace.h"
#include "rounding.h"

namespace twinround {
namespace {

bool is_within(Duration work, Duration time) {
  return at_least(time.minutes(), work.minutes());
}

// The course as one stretch of time from the first stitch on.
class Course {
 public:
  explicit Course(const Meetings& meetings) : meetings_(meetings) {}

  Duration start_of(int meeting) const {
    return (meetings_.in_class + meetings_.homework) * (meeting - 1);
  }
  Duration end_of(int meeting) const { return start_of(meeting) + meetings_.in_class; }

  void place(MilestoneReached& reached) const {
    for (int meeting = 1; meeting <= meetings_.count; ++meeting) {
      const bool in_class = is_within(reached.work, end_of(meeting));
      const bool at_home =
          meeting < meetings_.count && is_within(reached.work, start_of(meeting + 1));
      if (!in_class && !at_home) continue;
      reached.meeting = meeting;
      reached.at_home = !in_class;
      return;
    }
  }

 private:
  Meetings meetings_;
};

// Work of the pair until so many rounds are whole, cast-on among it: one entry a round, from none.
std::vector<Duration> work_by_rounds(const Plan& plan, double stitches_per_minute,
                                     Duration cast_on) {
  std::vector<Duration> work = {cast_on};
  int stitches = 0;
  for (const RoundSpan& span : plan.rounds) {
    for (int i = 0; i < span.rounds; ++i) {
      stitches += span.stitches;
      const Rounds rounds(static_cast<int>(work.size()));
      work.push_back(cast_on + knitting_time(2 * stitches, rounds, stitches_per_minute));
    }
  }
  return work;
}

Rounds whole_rounds(const std::vector<Duration>& work, Duration time) {
  int rounds = 0;
  while (rounds + 1 < static_cast<int>(work.size()) &&
         is_within(work[static_cast<std::size_t>(rounds) + 1], time)) {
    ++rounds;
  }
  return Rounds(rounds);
}

std::vector<MilestoneReached> milestones_of(const PlanRequest& request, const Plan& plan) {
  const Rounds toe(static_cast<int>(plan.toe.counts.size()));
  const Rounds total = plan.length.total;
  const Length foot = plan.foot.length.value * (1 + request.length_ease);
  // A sock hardly longer than its foot is tried on before the cuff at the latest.
  const Rounds before_cuff = total - plan.length.cuff;
  const Rounds try_on(
      std::clamp(ceil_count(foot * plan.gauge.rounds), toe.value(), before_cuff.value()));
  const Rounds shift = toe + Rounds(plan.rib.rounds_per_shift);
  const bool shifts = plan.rib.rounds_per_shift > 0 && shift < toe + plan.length.spiral;
  // Neither the first shift nor the try-on lies above the cuff.
  std::vector<MilestoneReached> all = {{Milestone::cast_on, Rounds()}, {Milestone::toe, toe}};
  if (shifts && shift <= try_on) all.push_back({Milestone::first_shift, shift});
  all.push_back({Milestone::try_on, try_on});
  if (shifts && shift > try_on) all.push_back({Milestone::first_shift, shift});
  if (plan.length.cuff > Rounds()) all.push_back({Milestone::cuff, before_cuff});
  all.push_back({Milestone::bind_off, total});
  return all;
}

// stitches/pace is the only part of the work that a pace shortens.
std::optional<int> least_pace(const Plan& plan, Duration available, Duration cast_on) {
  int stitches = 0;
  for (const RoundSpan& span : plan.rounds) stitches += 2 * span.rounds * span.stitches;
  const Duration turns = knitting_time(0, plan.length.total, 1);
  const Duration room = available - cast_on - turns;
  if (!clearly_above(room.minutes(), 0)) return {};
  const int pace = ceil_count(stitches / room.minutes());
  return pace <= kMostPace ? std::optional<int>(std::max(pace, 1)) : std::nullopt;
}

}  // namespace

Duration time_of(const Meetings& meetings) {
  return Course(meetings).end_of(meetings.count);
}

Weeks weeks_of(const PlanRequest& request, const Plan& plan, const Meetings& meetings) {
  const Course course(meetings);
  const std::vector<Duration> work =
      work_by_rounds(plan, request.stitches_per_minute, meetings.cast_on);
  Weeks weeks;
  for (int meeting = 1; meeting <= meetings.count; ++meeting) {
    weeks.meetings.push_back(
        {whole_rounds(work, course.start_of(meeting)), whole_rounds(work, course.end_of(meeting))});
  }
  weeks.milestones = milestones_of(request, plan);
  for (MilestoneReached& reached : weeks.milestones) {
    reached.work = work[static_cast<std::size_t>(reached.rounds.value())];
    course.place(reached);
  }
  weeks.available = time_of(meetings);
  weeks.work = work.back();
  weeks.slack = weeks.available - weeks.work;
  weeks.finishes = is_within(weeks.work, weeks.available);
  weeks.least_pace = least_pace(plan, weeks.available, meetings.cast_on);
  return weeks;
}

}  // namespace twinround

// A course of meetings: how far each pair of socks comes in each of them and at home between.
#pragma once

#include <optional>
#include <vector>

#include "plan.h"
#include "units.h"

namespace twinround {

inline constexpr int kMostMeetings = 30;
// Casting two toes on for the first time, slip knots to the first plain round. ASSUMPTION.
inline constexpr Duration kCastOnTime = Duration::from_minutes(20);
// The fastest pace there is to be told; a request of `plan` allows no faster one.
inline constexpr int kMostPace = 200;

struct Meetings {
  int count = 1;  // 1 to kMostMeetings
  Duration in_class;
  Duration homework;               // between one meeting and the next; none after the last
  Duration cast_on = kCastOnTime;  // at the start of the first meeting, whatever the pace
};

// All the time there is: every meeting, and the homework between.
Duration time_of(const Meetings& meetings);

// Rounds of one sock that are whole when a meeting begins, and when it ends. A round begun counts
// once it is finished.
struct MeetingRounds {
  Rounds at_start, at_end;
};

// What a class looks up for. Each is reached when so many rounds are whole:
enum class Milestone {
  cast_on,      // none yet, both toes cast on
  toe,          // those of the toe; the rib comes next
  first_shift,  // the next round moves the rib for the first time
  try_on,       // the sock is as long as its foot is to be: rounded up
  cuff,         // the next round is the cuff's first
  bind_off      // all; bind-off and tails have to be done in what is left of the time
};

struct MilestoneReached {
  Milestone milestone = Milestone::cast_on;
  Rounds rounds;
  Duration work;  // from the beginning of the course
  // The meeting it falls into, from 1, or the homework after that one; nothing where the course is
  // over before. What falls on the end of either counts as in it.
  std::optional<int> meeting;
  bool at_home = false;
};

struct Weeks {
  std::vector<MeetingRounds> meetings;
  std::vector<MilestoneReached> milestones;  // in the order they are reached
  Duration available;                        // time_of
  Duration work;   // cast-on and knitting: stitches at the pace, two turns a round
  Duration slack;  // what is left of the time; under zero, what is missing
  bool finishes = false;
  // Whole stitches a minute, rounded up, that the pair takes to be done in time; nothing where none
  // up to kMostPace is enough.
  std::optional<int> least_pace;
};

// `plan` is the request's own.
Weeks weeks_of(const PlanRequest& request, const Plan& plan, const Meetings& meetings);

}  // namespace twinround

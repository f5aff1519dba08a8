#include "weeks_question.h"

#include <vector>

#include "course_text.h"
#include "envelope.h"
#include "note_writer.h"
#include "plan_part.h"
#include "rounding.h"
#include "weeks.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;
constexpr int kMostKnitters = 60;
constexpr double kWeek = 7 * 24 * 60;  // minutes

// clang-format off
constexpr Field kAsked[] = {
  {.pointer = "", .about = "A course of meetings and who knits in it"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = kAlways, .min = kVersion, .max = kVersion, .step = 1},
  {.pointer = "/class", .about = "What all have in common", .kind = Kind::named, .need = kAlways, .words = "planPart"},
  {.pointer = "/knitters", .about = "Each knitter, or each yarn: what of the class's request it replaces",
   .kind = Kind::list, .need = kAlways, .min = 1, .max = kMostKnitters},
  {.pointer = "/knitters/*", .about = "One knitter", .kind = Kind::named, .words = "planPart"},
  {.pointer = "/meetings", .about = "How often the class meets",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = kMostMeetings, .step = 1},
  {.pointer = "/minutesInClass", .about = "Knitting time in a meeting",
   .kind = Kind::number, .need = kAlways, .min = 5, .max = 1440, .step = 5, .unit = "min"},
  {.pointer = "/minutesAtHome", .about = "Knitting time between two meetings",
   .kind = Kind::number, .min = 0, .max = kWeek, .step = 5, .unit = "min", .standard = "0"},
  {.pointer = "/castOnMinutes", .about = "Time in which both toes are cast on, in the first meeting",
   .kind = Kind::number, .min = 0, .max = 1440, .step = 5, .unit = "min", .standard = "20"},
};

constexpr Field kReply[] = {
  {.pointer = "", .about = "How far each pair comes in each meeting"},
  {.pointer = "/minutes", .about = "All meetings and the time at home between", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/knitters", .about = "In the order asked", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/knitters/*", .about = "One knitter"},
  {.pointer = "/knitters/*/weeks", .about = "Absent where there is no plan", .kind = Kind::named, .words = "knitterWeeks"},
  {.pointer = "/knitters/*/problems", .about = "Why there is none", .kind = Kind::list, .min = 1},
  {.pointer = "/knitters/*/problems/*", .kind = Kind::named, .words = "problem"},
};

constexpr Field kKnitter[] = {
  {.pointer = "", .about = "How far one pair comes"},
  {.pointer = "/stitchesPerMinute", .about = "The pace it is told for", .kind = Kind::number, .need = kAlways, .unit = "stitches a minute"},
  {.pointer = "/stitchCount", .about = "Stitches in a round of one sock", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/totalRounds", .about = "Rounds of one sock, toe to edge", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/meetings", .about = "Each meeting", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/meetings/*", .about = "One meeting"},
  {.pointer = "/meetings/*/roundsAtStart", .about = "Whole rounds of one sock when it begins", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/meetings/*/roundsAtEnd", .about = "Whole rounds of one sock when it ends", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/milestones", .about = "In the order they are reached", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/milestones/*", .about = "One milestone"},
  {.pointer = "/milestones/*/milestone", .about = "What comes next, or of cast-on and toe what is done", .kind = Kind::word, .need = kAlways,
   .words = "castOn | toe | firstShift | tryOn | cuff | bindOff"},
  {.pointer = "/milestones/*/rounds", .about = "Whole rounds of one sock by then", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/milestones/*/minutes", .about = "Knitting time of the pair by then", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/milestones/*/when", .about = "In a meeting, at home after one, or when the course is over", .kind = Kind::word, .need = kAlways,
   .words = "class | home | late"},
  {.pointer = "/milestones/*/meeting", .about = "Which meeting, from 1; absent where the course is over", .kind = Kind::whole},
  {.pointer = "/workMinutes", .about = "Cast-on and knitting; bind-off and tails are not in it", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/slackMinutes", .about = "What is left of the time; under 0, what is missing", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/finishes", .about = "Whether the last round is knit in time", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leastPace", .about = "The least whole pace that is done in time; absent where none is", .kind = Kind::whole, .unit = "stitches a minute"},
};
// clang-format on

const char* word_of(Milestone milestone) {
  switch (milestone) {
    case Milestone::cast_on:
      return "castOn";
    case Milestone::toe:
      return "toe";
    case Milestone::first_shift:
      return "firstShift";
    case Milestone::try_on:
      return "tryOn";
    case Milestone::cuff:
      return "cuff";
    case Milestone::bind_off:
      break;
  }
  return "bindOff";
}

void write_milestone(JsonWriter& json, const MilestoneReached& reached) {
  json.open_object();
  json.key("milestone").text(word_of(reached.milestone));
  json.key("rounds").whole(reached.rounds.value());
  json.key("minutes").real(reached.work.minutes());
  json.key("when").text(!reached.meeting ? "late" : reached.at_home ? "home" : "class");
  if (reached.meeting) json.key("meeting").whole(*reached.meeting);
  json.close_object();
}

void write_weeks(JsonWriter& json, const PlanRequest& request, const Plan& plan,
                 const Weeks& weeks) {
  json.open_object();
  json.key("stitchesPerMinute").real(request.stitches_per_minute);
  json.key("stitchCount").whole(plan.stitches.value());
  json.key("totalRounds").whole(plan.length.total.value());
  json.key("meetings").open_list();
  for (const MeetingRounds& meeting : weeks.meetings) {
    json.open_object();
    json.key("roundsAtStart").whole(meeting.at_start.value());
    json.key("roundsAtEnd").whole(meeting.at_end.value());
    json.close_object();
  }
  json.close_list();
  json.key("milestones").open_list();
  for (const MilestoneReached& reached : weeks.milestones) write_milestone(json, reached);
  json.close_list();
  json.key("workMinutes").real(weeks.work.minutes());
  json.key("slackMinutes").real(weeks.slack.minutes());
  json.key("finishes").yes_no(weeks.finishes);
  if (weeks.least_pace) json.key("leastPace").whole(*weeks.least_pace);
  json.close_object();
}

void write_knitter(JsonWriter& json, const ReadText& whole, const Meetings& meetings) {
  const Result<PlanRequest> request = request_of_parts(whole, request_fields());
  const Result<Plan> plan =
      request.ok() ? make_plan(request.value()) : Result<Plan>(request.problems());
  json.open_object();
  if (plan.ok()) {
    json.key("weeks");
    write_weeks(json, request.value(), plan.value(),
                weeks_of(request.value(), plan.value(), meetings));
  } else {
    json.key("problems");
    write_problems(json, plan.problems());
  }
  json.close_object();
}

Meetings meetings_in(const ReadText& outer) {
  Meetings meetings;
  meetings.count = round_half_up(number_at(outer, "/meetings"));
  meetings.in_class = Duration::from_minutes(number_at(outer, "/minutesInClass"));
  meetings.homework = Duration::from_minutes(number_at(outer, "/minutesAtHome"));
  if (outer.find("/castOnMinutes")) {
    meetings.cast_on = Duration::from_minutes(number_at(outer, "/castOnMinutes"));
  }
  return meetings;
}

}  // namespace

std::span<const Field> weeks_request_fields() {
  return kAsked;
}

std::span<const Field> weeks_reply_fields() {
  return kReply;
}

std::span<const Field> knitter_weeks_fields() {
  return kKnitter;
}

std::string answer_weeks(std::string_view text) {
  CourseText course = read_course(text, {kAsked, request_fields()});
  if (!course.problems.empty()) return refused(course.problems);
  const std::vector<ReadText> knitters = course.parts_at("/knitters", request_fields());
  tell_faults_of_parts("/knitters", knitters, request_fields(), course.problems);
  if (!course.problems.empty()) return refused(course.problems);

  const Meetings meetings = meetings_in(course.outer);
  return answered("weeks", [&](JsonWriter& json) {
    json.open_object();
    json.key("minutes").real(time_of(meetings).minutes());
    json.key("knitters").open_list();
    for (const ReadText& knitter : knitters) {
      write_knitter(json, laid_over(course.common, knitter), meetings);
    }
    json.close_list();
    json.close_object();
  });
}

}  // namespace twinround

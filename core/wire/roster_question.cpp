#include "roster_question.h"

#include <utility>
#include <vector>

#include "course_text.h"
#include "envelope.h"
#include "line_writer.h"
#include "needle_writer.h"
#include "note_writer.h"
#include "odd_question.h"
#include "plan_part.h"
#include "roster.h"
#include "seat_fields.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;

// clang-format off
constexpr Field kAsked[] = {
  {.pointer = "", .about = "A class and its seats"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = kAlways, .min = kVersion, .max = kVersion, .step = 1},
  {.pointer = "/class", .about = "What all have in common", .kind = Kind::named, .need = kAlways, .words = "seatPart"},
  {.pointer = "/seats", .about = "Each seat: what of the class's request it replaces",
   .kind = Kind::list, .need = kAlways, .min = 1, .max = kMostSeats},
  {.pointer = "/seats/*", .about = "One seat", .kind = Kind::named, .words = "seatPart"},
};

constexpr Field kReply[] = {
  {.pointer = "", .about = "A class seat by seat, and what it takes together"},
  {.pointer = "/seats", .about = "In the order asked", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/seats/*", .about = "One seat"},
  {.pointer = "/seats/*/line", .about = "Its figures; absent where there is no plan", .kind = Kind::named, .words = "pairLine"},
  {.pointer = "/seats/*/odd", .about = "What does harm, worst first; absent where nothing does", .kind = Kind::list, .min = 1},
  {.pointer = "/seats/*/odd/*", .kind = Kind::named, .words = "oddity"},
  {.pointer = "/seats/*/problems", .about = "Why there is no plan", .kind = Kind::list, .min = 1},
  {.pointer = "/seats/*/problems/*", .kind = Kind::named, .words = "problem"},
  {.pointer = "/planned", .about = "Seats that have a plan; the totals are theirs", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/wool", .about = "Yarn to buy by category, finest first", .kind = Kind::list, .need = kAlways},
  {.pointer = "/wool/*", .about = "One category"},
  {.pointer = "/wool/*/category", .about = "Which", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/wool/*/pairs", .about = "Pairs", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/wool/*/m", .about = "Yarn, margins in it", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/wool/*/g", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/wool/*/balls", .about = "Balls, whole ones for each pair", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/wool/*/pairsWithoutBall", .about = "Pairs that are not in the balls: neither label nor category is known", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/needles", .about = "Needles to lend, thinnest first", .kind = Kind::list, .need = kAlways},
  {.pointer = "/needles/*", .about = "One size and length"},
  {.pointer = "/needles/*/mm", .about = "Diameter", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/needles/*/us", .about = "Its US name", .kind = Kind::text},
  {.pointer = "/needles/*/uk", .about = "Its UK name", .kind = Kind::text},
  {.pointer = "/needles/*/cableMm", .about = "Its length as sold; absent where none is long enough", .kind = Kind::number, .unit = "mm"},
  {.pointer = "/needles/*/count", .about = "How many", .kind = Kind::whole, .need = kAlways},
};
// clang-format on

// Writes the seat, and adds its line to those that are summed up.
void write_seat(JsonWriter& json, const ReadText& whole, std::span<const Field> table,
                std::vector<PairLine>& lines) {
  const Result<PlanRequest> request = request_of_parts(whole, table);
  const Result<Seat> seat =
      request.ok() ? plan_seat(request.value(), in_hand(whole)) : Result<Seat>(request.problems());
  json.open_object();
  if (!seat.ok()) {
    json.key("problems");
    write_problems(json, seat.problems());
    return json.close_object();
  }
  lines.push_back(seat.value().line);
  json.key("line");
  write_line(json, seat.value().line);
  if (!seat.value().odd.empty()) {
    json.key("odd");
    write_oddities(json, seat.value().odd);
  }
  json.close_object();
}

void write_wool(JsonWriter& json, const std::vector<WoolTotal>& totals) {
  json.open_list();
  for (const WoolTotal& wool : totals) {
    json.open_object();
    json.key("category").whole(wool.category);
    json.key("pairs").whole(wool.pairs);
    json.key("m").real(wool.length.m());
    json.key("g").real(wool.mass.g());
    json.key("balls").whole(wool.balls);
    json.key("pairsWithoutBall").whole(wool.pairs_without_ball);
    json.close_object();
  }
  json.close_list();
}

void write_needles(JsonWriter& json, const std::vector<NeedleTotal>& totals) {
  json.open_list();
  for (const NeedleTotal& needles : totals) {
    json.open_object();
    write_needle_name(json, needles.needle);
    if (needles.cable) json.key("cableMm").real(needles.cable->mm());
    json.key("count").whole(needles.count);
    json.close_object();
  }
  json.close_list();
}

}  // namespace

std::span<const Field> roster_request_fields() {
  return kAsked;
}

std::span<const Field> roster_reply_fields() {
  return kReply;
}

std::string answer_roster(std::string_view text) {
  const std::vector<Field> table = seat_fields();
  const CourseText course = read_course(text, {kAsked, table}, kMostRosterBytes);
  if (!course.problems.empty()) return refused(course.problems);

  return answered("roster", [&](JsonWriter& json) {
    std::vector<PairLine> lines;
    json.open_object();
    json.key("seats").open_list();
    for (const ReadText& seat : course.parts_at("/seats", table)) {
      write_seat(json, laid_over(course.common, seat), table, lines);
    }
    json.close_list();
    const RosterTotals totals = totals_of(lines);
    json.key("planned").whole(totals.planned);
    json.key("wool");
    write_wool(json, totals.wool);
    json.key("needles");
    write_needles(json, totals.needles);
    json.close_object();
  });
}

}  // namespace twinround

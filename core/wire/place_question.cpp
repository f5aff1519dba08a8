#include "place_question.h"

#include "envelope.h"
#include "lap_pace.h"
#include "making_fields.h"
#include "pace.h"
#include "place.h"
#include "request_check.h"
#include "rounding.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;
constexpr std::string_view kEvents = "increase | rib | shift | widening | cuff | bindOff";
constexpr double kMostLapSeconds = 86400;

// clang-format off
constexpr Field kHead[] = {
  {.pointer = "", .about = "Where a pair in the making stands"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = kAlways, .min = kVersion, .max = kVersion, .step = 1},
};

constexpr Field kAsked[] = {
  {.pointer = "/done", .about = "What is knit of both socks", .need = kAlways},
  {.pointer = "/done/rounds", .about = "Whole rounds of the pair, cast-on apart",
   .kind = Kind::whole, .need = kAlways, .max = kMostRounds, .step = 1, .unit = "rounds"},
  {.pointer = "/done/passes", .about = "Whole passes of the round in hand: A first half, B first half, B second half, A second half",
   .kind = Kind::whole, .max = kPassesPerRound - 1, .step = 1, .standard = "0"},
  {.pointer = "/stitchesPerMinute", .about = "The pace to reckon with where no lap was timed",
   .kind = Kind::number, .min = 1, .max = 200, .step = 1, .unit = "stitches a minute", .standard = "15"},
  {.pointer = "/laps", .about = "Rounds of the pair that were timed", .kind = Kind::list, .max = 32},
  {.pointer = "/laps/*", .about = "One of them"},
  {.pointer = "/laps/*/stitches", .about = "Its stitches, of both socks",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 4000, .step = 1, .unit = "stitches"},
  {.pointer = "/laps/*/seconds", .about = "What it took, turns and all",
   .kind = Kind::number, .need = kAlways, .max = kMostLapSeconds, .step = 1, .unit = "s"},
};

constexpr Field kAnswered[] = {
  {.pointer = "", .about = "Where the pair stands"},
  {.pointer = "/allDone", .about = "Whether every round is knit and the bind-off is left", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/stitches", .about = "Stitches after the round in hand, of one sock", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/usedM", .about = "Yarn used so far, cast-on and its tail among it", .need = kAlways},
  {.pointer = "/usedM/a", .about = "Of sock A", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/usedM/b", .about = "Of sock B", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/usedM/pair", .about = "Of both", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/toGoM", .about = "Yarn still to go, bind-off and its tail among it", .need = kAlways},
  {.pointer = "/toGoM/a", .about = "Of sock A", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/toGoM/b", .about = "Of sock B", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/toGoM/pair", .about = "Of both", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/stitchesWorked", .about = "Stitches knit of the pair, cast-on apart", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/stitchesToGo", .about = "Stitches to knit of the pair, bind-off apart", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/roundsToGo", .about = "Rounds to go, the one in hand among them", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/next", .about = "What comes, one of a kind at most, nearest first", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/next/*", .about = "One of them"},
  {.pointer = "/next/*/kind", .about = "What", .kind = Kind::word, .need = kAlways, .words = kEvents},
  {.pointer = "/next/*/round", .about = "The round it is in, from 1; the bind-off one past the last", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/next/*/inRounds", .about = "Rounds to finish before it; 0: the one in hand", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/pace", .about = "How fast it goes", .need = kAlways},
  {.pointer = "/pace/stitchesPerMinute", .about = "Median of the laps, turns taken off; or as asked", .kind = Kind::number, .need = kAlways, .unit = "stitches a minute"},
  {.pointer = "/pace/from", .about = "What that is from", .kind = Kind::word, .need = kAlways, .words = "laps | asked"},
  {.pointer = "/pace/minutesToGo", .about = "For the rest of both socks, bind-off apart", .kind = Kind::number, .need = kAlways, .unit = "min"},
};
// clang-format on

PairDone done_in(const ReadText& read) {
  return {round_half_up(read.number_at("/done/rounds").value_or(0)),
          round_half_up(read.number_at("/done/passes").value_or(0))};
}

std::vector<Lap> laps_in(const ReadText& read) {
  std::vector<Lap> laps;
  for (int i = 0; read.find("/laps/*", i); ++i) {
    laps.push_back({round_half_up(read.number_at("/laps/*/stitches", i).value_or(0)),
                    Duration::from_seconds(read.number_at("/laps/*/seconds", i).value_or(0))});
  }
  return laps;
}

Problem too_far(const char* field, int most, std::string message) {
  return {field,
          "out_of_range",
          {{"min", 0}, {"max", static_cast<double>(most)}},
          {},
          std::move(message)};
}

// What hangs on several fields.
std::vector<Problem> check_together(const ReadText& read) {
  std::vector<Problem> problems;
  if (const auto problem = making_problem(read)) problems.push_back(*problem);
  const int rounds = rounds_of(making_in(read));
  const PairDone done = done_in(read);
  if (done.rounds > rounds) {
    problems.push_back(
        too_far("/done/rounds", rounds,
                "The sock has " + std::to_string(rounds) + " rounds: give as many at most."));
  } else if (done.rounds == rounds && done.passes > 0) {
    problems.push_back(
        too_far("/done/passes", 0, "Every round is knit, and none is in hand: give 0 passes."));
  }
  const std::vector<Lap> laps = laps_in(read);
  for (std::size_t i = 0; i < laps.size(); ++i) {
    if (clearly_above(laps[i].time.minutes(), turns_of_a_lap().minutes())) continue;
    const int least = round_half_up(60 * turns_of_a_lap().minutes());
    problems.push_back({"/laps/" + std::to_string(i) + "/seconds",
                        "lap_too_short",
                        {{"turnsSeconds", static_cast<double>(least)}},
                        {},
                        "The two turns of a round alone take about " + std::to_string(least) +
                            " seconds: time a whole round of both socks, or leave this one out."});
  }
  return problems;
}

void write_metres(JsonWriter& json, const char* key, Length a, Length b) {
  json.key(key).open_object();
  json.key("a").real(a.m());
  json.key("b").real(b.m());
  json.key("pair").real((a + b).m());
  json.close_object();
}

void write_next(JsonWriter& json, const std::vector<Coming>& next) {
  json.key("next").open_list();
  for (const Coming& coming : next) {
    json.open_object();
    json.key("kind").text(word_at(kEvents, static_cast<int>(coming.event)));
    json.key("round").whole(coming.round);
    json.key("inRounds").whole(coming.in);
    json.close_object();
  }
  json.close_list();
}

void write_place(JsonWriter& json, const Place& place, const std::vector<Lap>& laps,
                 double asked_pace) {
  json.open_object();
  json.key("allDone").yes_no(place.all_done);
  json.key("stitches").whole(place.stitches);
  write_metres(json, "usedM", place.a.used, place.b.used);
  write_metres(json, "toGoM", place.a.to_go, place.b.to_go);
  json.key("stitchesWorked").whole(place.worked);
  json.key("stitchesToGo").whole(place.to_go);
  json.key("roundsToGo").whole(place.rounds_to_go);
  write_next(json, place.next);
  const double pace = laps.empty() ? asked_pace : pace_of(laps);
  json.key("pace").open_object();
  json.key("stitchesPerMinute").real(pace);
  json.key("from").text(laps.empty() ? "asked" : "laps");
  json.key("minutesToGo")
      .real(knitting_time(place.to_go, Rounds(place.rounds_to_go), pace).minutes());
  json.close_object();
  json.close_object();
}

}  // namespace

std::string answer_place(std::string_view text) {
  const std::vector<Field> table = place_request_fields();
  const ReadText read = read_json(text, table, kMostMakingBytes);
  std::vector<Problem> problems = check_fields(read, table);
  if (problems.empty()) problems = check_together(read);
  if (!problems.empty()) return refused(problems);
  const Place place = place_of(making_in(read), done_in(read));
  return answered("place", [&](JsonWriter& json) {
    write_place(json, place, laps_in(read),
                read.number_at("/stitchesPerMinute").value_or(kLearnerPace));
  });
}

std::vector<Field> place_request_fields() {
  const std::span<const Field> sock = making_fields();
  std::vector<Field> fields(std::begin(kHead), std::end(kHead));
  fields.insert(fields.end(), sock.begin(), sock.end());
  fields.insert(fields.end(), std::begin(kAsked), std::end(kAsked));
  return fields;
}

std::span<const Field> place_reply_fields() {
  return kAnswered;
}

}  // namespace twinround

#include "stripes_answer.h"

#include <algorithm>
#include <cmath>

#include "envelope.h"
#include "round_writer.h"
#include "rounding.h"
#include "stripes_reader.h"

namespace twinround {
namespace {

const char* word_of(YarnFrom from) {
  switch (from) {
    case YarnFrom::two_balls:
      return "two-balls";
    case YarnFrom::two_ends:
      return "two-ends";
    case YarnFrom::halves:
      break;
  }
  return "halves";
}

const char* word_of(Enough enough) {
  switch (enough) {
    case Enough::yes:
      return "yes";
    case Enough::just:
      return "just";
    case Enough::no:
      break;
  }
  return "no";
}

void write_bands(JsonWriter& json, const char* name, const std::vector<Band>& bands) {
  json.key(name).open_list();
  for (const Band& band : bands) {
    json.open_object();
    json.key("colour").whole(band.colour);
    json.key("m").real(band.yarn.m());
    json.key("fromRound").whole(band.from.round);
    json.key("fromShare").real(band.from.share);
    json.key("fromHalf").whole(band.from.share < 0.5 ? 1 : 2);
    json.key("toRound").whole(band.to.round);
    json.key("toShare").real(band.to.share);
    json.close_object();
  }
  json.close_list();
}

void write_pull_off(JsonWriter& json, const char* name, const std::optional<PullOff>& off) {
  if (!off) return;
  json.key(name).open_object();
  json.key("m").real(off->yarn.m());
  json.key("g").real(off->mass.g());
  json.close_object();
}

void write_use(JsonWriter& json, const BallUse& use) {
  json.open_object();
  json.key("holdsM").real(use.holds.m());
  json.key("needM").real((use.holds - use.pulled - use.spare).m());
  json.key("pulledM").real(use.pulled.m());
  json.key("spareM").real(use.spare.m());
  json.key("enough").text(word_of(use.enough));
  json.close_object();
}

void write_repeat(JsonWriter& json, const StripesInput& input, const StripePlan& plan) {
  json.open_object();
  json.key("from").text(word_of(input.from));
  json.key("repeatM").real(plan.repeat.m());
  write_bands(json, "bandsA", plan.a);
  write_bands(json, "bandsB", plan.b);
  json.key("isAlike").yes_no(plan.alike);
  json.key("isOpposite").yes_no(plan.opposite);
  json.key("isMirror").yes_no(plan.mirrors);
  json.key("canMatch").yes_no(plan.off_b.has_value());
  write_pull_off(json, "pullOffB", plan.off_b);
  write_pull_off(json, "pullOffA", plan.off_a);
  write_pull_off(json, "cut", plan.cut);
  json.key("balls").open_list();
  if (plan.use_a) write_use(json, *plan.use_a);
  if (plan.use_b) write_use(json, *plan.use_b);
  json.close_list();
  json.close_object();
}

void write_own(JsonWriter& json, const OwnStripes& own) {
  json.open_object();
  write_bands(json, "bands", own.bands);
  json.key("colours").open_list();
  for (const ColourNeed& need : own.colours) {
    json.open_object();
    json.key("colour").whole(need.colour);
    json.key("bands").whole(need.bands);
    json.key("mPerPair").real(need.pair.m());
    json.key("gPerPair").real(need.pair_mass.g());
    json.close_object();
  }
  json.close_list();
  json.key("changes").whole(own.changes);
  json.key("moreIfCutM").real(own.more_if_cut.m());
  json.close_object();
}

void write_parts(JsonWriter& json, const YarnCourse& course, const Leftovers& found) {
  json.key("parts").open_list();
  for (const LotPart& part : parts_of(course, found.runs)) {
    json.open_object();
    json.key("lot").whole(part.lot + 1);
    json.key("section").text(word_of(part.section));
    json.key("fromRound").whole(part.from);
    json.key("toRound").whole(part.to);
    json.close_object();
  }
  json.close_list();
}

void write_lot(JsonWriter& json, const LotMakes& lot, Length used, std::optional<double> apart) {
  json.open_object();
  json.key("mPerSock").real(lot.half.m());
  json.key("usedM").real(used.m());
  json.key("makesToe").yes_no(lot.toe);
  json.key("makesSpiral").yes_no(lot.spiral);
  json.key("makesWidening").yes_no(lot.widening);
  json.key("makesCuff").yes_no(lot.cuff);
  if (apart) {
    json.key("thicknessApart").real(*apart);
    json.key("isOtherThickness").yes_no(clearly_above(std::abs(*apart), kSameThickness));
  }
  json.close_object();
}

void write_leftovers(JsonWriter& json, const YarnCourse& course, const LeftoversQuestion& question,
                     double tex) {
  const Leftovers found = lay_leftovers(course, question.input);
  json.open_object();
  json.key("reaches").yes_no(found.reaches);
  json.key("keepsMargin").yes_no(found.keeps_margin);
  json.key("rounds").whole(found.rounds);
  json.key("joins").whole(found.joins);
  json.key("joinsInside").whole(found.joins_inside);
  json.key("missingM").real(found.missing.m());
  if (question.leg_height && question.rounds && found.rounds > 0) {
    const Rounds short_of(static_cast<int>(course.rounds.size()) - found.rounds);
    const Length leg = *question.leg_height - short_of / *question.rounds;
    json.key("legHeightMm").real(std::max(leg, Length{}).mm());
  }
  std::vector<Band> bands;
  std::vector<Length> used(found.lots.size());
  for (const LotRun& run : found.runs) {
    bands.push_back({run.lot + 1, run.yarn, {run.from, 0}, {run.to, 1}});
    used[static_cast<std::size_t>(run.lot)] = run.yarn;
  }
  write_bands(json, "bands", bands);
  write_parts(json, course, found);
  json.key("lots").open_list();
  for (std::size_t lot = 0; lot < found.lots.size(); ++lot) {
    const std::optional<double> own = question.tex[lot];
    write_lot(json, found.lots[lot], used[lot],
              own ? std::optional<double>(*own / tex - 1) : std::nullopt);
  }
  json.close_list();
  json.close_object();
}

void write_stripes(JsonWriter& json, const StripesQuestion& question, const YarnCourse& course,
                   const std::optional<StripePlan>& striped) {
  json.open_object();
  if (striped) {
    json.key("repeat");
    write_repeat(json, *question.repeat, *striped);
  }
  if (!question.own.empty()) {
    json.key("own");
    write_own(json, own_stripes(course, question.own, question.tex));
  }
  if (question.leftovers) {
    json.key("leftovers");
    write_leftovers(json, course, *question.leftovers, question.tex);
  }
  json.close_object();
}

}  // namespace

std::string answer_stripes(std::string_view text) {
  const Result<StripesQuestion> read = read_stripes_request(text);
  if (!read.ok()) return refused(read.problems());
  const StripesQuestion& question = read.value();
  const YarnCourse course = yarn_course(question.sock);
  std::optional<StripePlan> striped;
  if (question.repeat) {
    const Result<StripePlan> plan = stripe_plan(course, *question.repeat);
    if (!plan.ok()) return refused(plan.problems());
    striped = plan.value();
  }
  return answered("stripes",
                  [&](JsonWriter& json) { write_stripes(json, question, course, striped); });
}

}  // namespace twinround

#include "adjust_writer.h"

#include "round_writer.h"
#include "yarn_left.h"

namespace twinround {
namespace {

constexpr double kMetresOfTex = 1000;  // tex: grams in so many metres

const char* word_of(Remedy remedy) {
  switch (remedy) {
    case Remedy::keep:
      return "keep";
    case Remedy::change:
      return "change";
    case Remedy::restart:
      break;
  }
  return "restart";
}

void write_gauge(JsonWriter& json, const Gauge& gauge, bool has_stitches, bool has_rounds) {
  json.open_object();
  if (has_stitches) {
    json.key("stitchesPerMm").real(gauge.stitches.per_mm());
    json.key("relativeError").real(gauge.stitches_error);
  }
  if (has_rounds) {
    json.key("roundsPerMm").real(gauge.rounds.per_mm());
    json.key("roundsRelativeError").real(gauge.rounds_error);
  }
  json.close_object();
}

void write_step(JsonWriter& json, const ToeStep& step) {
  json.open_object();
  json.key("round").whole(step.round);
  json.key("added").yes_no(step.added);
  json.key("begunSides").text(word_of(step.begun));
  json.key("sides").text(word_of(step.worked));
  json.key("stitches").whole(step.stitches.value());
  json.close_object();
}

double grams(Length yarn, double tex) {
  return yarn.m() * tex / kMetresOfTex;
}

void write_way(JsonWriter& json, const Way& way, double tex) {
  json.open_object();
  json.key("way").text(word_of(way.remedy));
  json.key("stitchCount").whole(way.stitches.value());
  json.key("girthEase").real(way.girth_ease);
  json.key("finishedGirthMm").real(way.finished_girth.mm());
  json.key("heelUse").real(way.heel_use);
  json.key("passes").yes_no(way.passes);
  json.key("totalRounds").whole(way.total.value());
  json.key("fromRound").whole(way.from);
  json.key("roundsLost").whole(way.lost.value());
  json.key("roundsToGo").whole(way.to_go.value());
  json.key("roundsOver").whole(way.over.value());
  json.key("steps").open_list();
  for (const ToeStep& step : way.steps) write_step(json, step);
  json.close_list();
  json.key("ribFromRound").whole(way.rib_from);
  json.key("mPerPair").real(way.yarn_pair.m());
  json.key("gPerPair").real(grams(way.yarn_pair, tex));
  json.key("mToGo").real(way.yarn_to_go.m());
  json.key("gToGo").real(grams(way.yarn_to_go, tex));
  json.key("minutesToGo").real(way.time_to_go.minutes());
  json.close_object();
}

void write_measured(JsonWriter& json, const Adjustment& adjustment) {
  const NeedleGauge& both = *adjustment.gauge;
  json.open_object();
  json.key("swatch");
  write_gauge(json, adjustment.planned.gauge, true, true);
  json.key("toe");
  write_gauge(json, both.toe, both.has_stitches, both.has_rounds);
  json.key("together");
  write_gauge(json, both.gauge, true, true);
  json.key("errorsApart").real(both.apart);
  json.key("isApart").yes_no(both.is_apart);
  json.key("byToeAlone").yes_no(both.by_toe_alone);
  json.key("advised").text(word_of(adjustment.advised));
  json.key("ways").open_list();
  for (const Way& way : adjustment.ways) write_way(json, way, adjustment.known.yarn.tex);
  json.close_list();
  json.close_object();
}

void write_yarn_left(JsonWriter& json, const char* sock, const AdjustRequest& request,
                     const Plan& plan, Mass left) {
  const double tex = plan.yarn.tex;
  const Length yarn = Length::from_m(kMetresOfTex * left.g() / tex);
  const YarnLeft makes = yarn_left(plan, request.plan.leg_height, {request.rounds_done, yarn});
  json.open_object();
  json.key("sock").text(sock);
  json.key("g").real(left.g());
  json.key("m").real(yarn.m());
  json.key("keptBackM").real(makes.kept_back.m());
  json.key("keptBackG").real(grams(makes.kept_back, tex));
  json.key("rounds").whole(makes.rounds);
  json.key("lastRound").whole(makes.last_round);
  json.key("roundsToGo").whole(makes.rounds_to_go);
  json.key("roundsShort").whole(makes.rounds_short);
  json.key("roundsOver").whole(makes.rounds_over);
  json.key("leftOverM").real(makes.left_over.m());
  json.key("roundsToUnpick").whole(makes.rounds_to_unpick);
  json.key("legHeightMm").real(makes.leg_height.mm());
  json.key("reachesLeg").yes_no(makes.reaches_leg);
  json.key("roundToJoin").whole(round_to_join(plan, request.rounds_done, yarn));
  json.close_object();
}

}  // namespace

void write_adjustment(JsonWriter& json, const AdjustQuestion& question,
                      const Adjustment& adjustment) {
  json.open_object();
  if (adjustment.gauge) {
    json.key("measured");
    write_measured(json, adjustment);
  }
  const Plan& plan = adjustment.known;
  json.key("yarnGuessed").yes_no(plan.yarn.mass_guessed);
  json.key("yarnLeft").open_list();
  if (question.left_a) write_yarn_left(json, "a", question.request, plan, *question.left_a);
  if (question.left_b) write_yarn_left(json, "b", question.request, plan, *question.left_b);
  json.close_list();
  json.close_object();
}

}  // namespace twinround

#include "adjust_writer.h"

#include "yarn_left.h"

namespace twinround {
namespace {

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

void write_gauge(JsonWriter& json, const NeedleGauge& both) {
  json.open_object();
  json.key("stitchesPerMm").real(both.gauge.stitches.per_mm());
  json.key("roundsPerMm").real(both.gauge.rounds.per_mm());
  json.key("relativeError").real(both.gauge.stitches_error);
  json.key("roundsRelativeError").real(both.gauge.rounds_error);
  json.key("errorsApart").real(both.apart);
  json.key("isApart").yes_no(both.apart > kApart);
  json.close_object();
}

void write_way(JsonWriter& json, const Way& way) {
  json.open_object();
  json.key("way").text(word_of(way.remedy));
  json.key("stitchCount").whole(way.stitches.value());
  json.key("girthEase").real(way.girth_ease);
  json.key("finishedGirthMm").real(way.finished_girth.mm());
  json.key("heelUse").real(way.heel_use);
  json.key("passes").yes_no(way.passes);
  json.key("totalRounds").whole(way.total.value());
  json.key("roundsToGo").whole(way.to_go.value());
  json.key("roundsLost").whole(way.lost.value());
  json.key("increaseRounds").whole(way.increases);
  json.key("mPerPair").real(way.yarn_pair.m());
  json.key("minutesToGo").real(way.time_to_go.minutes());
  json.close_object();
}

void write_yarn_left(JsonWriter& json, const char* sock, const AdjustRequest& request,
                     const Plan& plan, Mass left) {
  const Length yarn = Length::from_m(1000 * left.g() / plan.yarn.tex);
  const YarnLeft makes = yarn_left(plan, request.plan.leg_height, {request.rounds_done, yarn});
  json.open_object();
  json.key("sock").text(sock);
  json.key("m").real(yarn.m());
  json.key("keptBackM").real(makes.kept_back.m());
  json.key("rounds").whole(makes.rounds);
  json.key("roundsShort").whole(makes.rounds_short);
  json.key("roundsToUnpick").whole(makes.rounds_to_unpick);
  json.key("legHeightMm").real(makes.leg_height.mm());
  json.key("roundToJoin").whole(round_to_join(plan, request.rounds_done, yarn));
  json.close_object();
}

}  // namespace

void write_adjustment(JsonWriter& json, const AdjustQuestion& question,
                      const Adjustment& adjustment) {
  json.open_object();
  json.key("gauge");
  write_gauge(json, adjustment.gauge);
  json.key("advised").text(word_of(adjustment.advised));
  json.key("ways").open_list();
  for (const Way& way : adjustment.ways) write_way(json, way);
  json.close_list();
  json.key("yarnLeft").open_list();
  const Plan& plan = adjustment.planned;
  if (question.left_a) write_yarn_left(json, "a", question.request, plan, *question.left_a);
  if (question.left_b) write_yarn_left(json, "b", question.request, plan, *question.left_b);
  json.close_list();
  json.close_object();
}

}  // namespace twinround

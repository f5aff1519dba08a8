#include "plan_writer.h"

#include <string>

#include "needle_writer.h"
#include "note_writer.h"
#include "round_writer.h"
#include "served_writer.h"
#include "tube.h"
#include "yarn_writer.h"

namespace twinround {
namespace {

const char* word_of(GaugeSource source) {
  switch (source) {
    case GaugeSource::swatch:
      return "swatch";
    case GaugeSource::rib_swatch:
      return "rib-swatch";
    case GaugeSource::label:
      break;
  }
  return "label";
}

const char* word_of(Lean lean) {
  switch (lean) {
    case Lean::left:
      return "left";
    case Lean::right:
      return "right";
    case Lean::mirrored:
      break;
  }
  return "mirrored";
}

// Each reading's own gauge, so that its scatter can be drawn.
void write_readings(JsonWriter& json, const std::vector<ReadingGauge>& readings) {
  json.open_list();
  for (const ReadingGauge& reading : readings) {
    json.open_object();
    json.key("stitchesPerMm").real(reading.stitches.per_mm());
    if (reading.rounds) json.key("roundsPerMm").real(reading.rounds->per_mm());
    json.close_object();
  }
  json.close_list();
}

void write_gauge(JsonWriter& json, const Gauge& gauge, const std::vector<ReadingGauge>& readings) {
  json.open_object();
  json.key("stitchesPerMm").real(gauge.stitches.per_mm());
  json.key("roundsPerMm").real(gauge.rounds.per_mm());
  json.key("relativeError").real(gauge.stitches_error);
  json.key("roundsRelativeError").real(gauge.rounds_error);
  json.key("from").text(word_of(gauge.source));
  json.key("readings");
  write_readings(json, readings);
  json.close_object();
}

// lengthMm, lengthEstimated, lengthSpreadMm; the spread only where there is one.
void write_measure(JsonWriter& json, const std::string& name, const FootFigure& figure) {
  json.key(name + "Mm").real(figure.value.mm());
  json.key(name + "Estimated").yes_no(figure.estimated);
  if (figure.spread.mm() > 0) json.key(name + "SpreadMm").real(figure.spread.mm());
}

void write_foot(JsonWriter& json, const PlannedFoot& foot) {
  json.open_object();
  write_measure(json, "length", foot.length);
  write_measure(json, "ballGirth", foot.ball_girth);
  write_measure(json, "heelAnkleGirth", foot.heel_girth);
  json.key("heelToPassMm").real(heel_to_pass(foot).mm());
  write_measure(json, "ankleGirth", foot.ankle_girth);
  write_measure(json, "calfGirth", foot.calf_girth);
  json.close_object();
}

void write_rib(JsonWriter& json, const Rib& rib) {
  json.open_object();
  json.key("knit").whole(rib.knit);
  json.key("purl").whole(rib.purl);
  json.key("roundsPerShift").whole(rib.rounds_per_shift);
  json.key("lean").text(word_of(rib.lean));
  json.close_object();
}

void write_choices(JsonWriter& json, const std::vector<Choice>& choices) {
  json.open_list();
  for (const Choice& choice : choices) {
    json.open_object();
    json.key("stitches").whole(choice.stitches.value());
    json.key("girthMm").real(choice.girth.mm());
    json.key("ease").real(choice.ease);
    json.key("heelUse").real(choice.heel_use);
    json.key("halvesAlike").yes_no(choice.halves_alike);
    json.key("mPerPair").real(choice.yarn_pair.m());
    json.key("minutes").real(choice.time.minutes());
    json.close_object();
  }
  json.close_list();
}

void write_ribs(JsonWriter& json, const std::vector<RibThatFits>& ribs) {
  json.open_list();
  for (const RibThatFits& rib : ribs) {
    json.open_object();
    json.key("knit").whole(rib.knit);
    json.key("purl").whole(rib.purl);
    json.key("stitches").whole(rib.count.value());
    json.key("ease").real(rib.ease);
    json.close_object();
  }
  json.close_list();
}

void write_count(JsonWriter& json, const Plan& plan) {
  json.key("stitchCount").whole(plan.stitches.value());
  if (plan.advised) json.key("advisedCount").whole(plan.advised->value());
  json.key("girthEase").real(plan.girth_ease);
  json.key("girthError").real(plan.girth_error);
  json.key("restGirthError").real(plan.rest_girth_error);
  json.key("finishedGirthMm").real(plan.finished_girth.mm());
  json.key("restGirthMm").real(plan.rest_girth.mm());
  json.key("widestGirthMm").real(plan.widest_girth.mm());
  json.key("passGirthMm").real(plan.pass_girth.mm());
  json.key("heelUse").real(plan.heel_use);
  json.key("heelUseError").real(plan.heel_use_error);
  json.key("passUse").real(kPassUse);
  json.key("halvesAlike").yes_no(plan.halves_alike);
  json.key("choices");
  write_choices(json, plan.choices);
  json.key("ribsThatFit");
  write_ribs(json, plan.ribs_that_fit);
}

void write_stages(JsonWriter& json, const std::vector<WideningStage>& stages) {
  json.open_list();
  for (const WideningStage& stage : stages) {
    json.open_object();
    json.key("knit").whole(stage.rib.knit);
    json.key("purl").whole(stage.rib.purl);
    json.key("stitches").whole(stage.rib.stitches.value());
    json.key("ribRound").whole(stage.round);
    json.key("neededFromMm").real(stage.needed_from.mm());
    if (stage.crossing != 0) json.key("crossing").whole(stage.crossing);
    json.close_object();
  }
  json.close_list();
}

void write_larger_needle(JsonWriter& json, const LargerNeedle& larger) {
  json.open_object();
  json.key("fromMm").real(larger.from_height.mm());
  json.key("stitchesPerMmAtMost").real(larger.gauge_at_most.per_mm());
  write_needle_name(json, larger.needle);
  json.close_object();
}

void write_sections(JsonWriter& json, const Plan& plan) {
  json.key("castOn").open_object();
  json.key("wraps").whole(plan.toe.wraps);
  json.key("stitches").whole(plan.toe.cast_on.value());
  json.close_object();
  json.key("toe");
  write_toe(json, plan.toe);
  json.key("spiral").open_object();
  json.key("rounds").whole(plan.spiral_rounds.value());
  json.key("periodRounds").whole(plan.period.value());
  if (plan.pitch) json.key("pitchDeg").real(plan.pitch->degrees());
  json.close_object();
  json.key("widening").open_object();
  json.key("rounds").whole(plan.widening_rounds.value());
  json.key("stages");
  write_stages(json, plan.widening);
  json.close_object();
  json.key("cuff").open_object();
  json.key("rounds").whole(plan.length.cuff.value());
  json.close_object();
}

void write_length(JsonWriter& json, const SockLength& length) {
  json.key("totalRounds").whole(length.total.value());
  json.key("tryOnRound").whole(length.try_on.value());
  json.key("lengthMm").real(length.length.mm());
  json.key("heelDepthMm").real(length.heel_depth.mm());
  json.key("leastLegMm").real(length.least_leg.mm());
  json.key("backStrain").real(length.back_strain);
  json.key("frontStrain").real(length.front_strain);
}

void write_leg_fit(JsonWriter& json, const Plan& plan) {
  const LegFit& fit = plan.leg_fit;
  json.open_object();
  json.key("widestGirthMm").real(fit.widest_girth.mm());
  json.key("widestHeightMm").real(fit.widest_height.mm());
  json.key("worstUse").real(fit.worst_use);
  json.key("widestEstimated").yes_no(leg_estimated_at(plan.foot, fit.widest_height));
  json.key("edgeGirthMm").real(fit.edge_girth.mm());
  json.key("edgeEstimated").yes_no(plan.edge_estimated);
  json.close_object();
}

void write_needle(JsonWriter& json, const NeedleChoice& needle) {
  json.open_object();
  write_needle_name(json, needle.name);
  json.key("cableMinMm").real(needle.cable_least.mm());
  if (needle.cable_buy) json.key("cableBuyMm").real(needle.cable_buy->mm());
  json.close_object();
}

}  // namespace

void write_plan(JsonWriter& json, const Plan& plan) {
  json.open_object();
  json.key("gauge");
  write_gauge(json, plan.gauge, plan.readings);
  json.key("category").whole(plan.category);
  json.key("categoryGiven").yes_no(plan.category_given);
  json.key("foot");
  write_foot(json, plan.foot);
  json.key("rib");
  write_rib(json, plan.rib);
  write_count(json, plan);
  write_sections(json, plan);
  write_length(json, plan.length);
  json.key("legFit");
  write_leg_fit(json, plan);
  json.key("edgeStitches").whole(plan.edge_stitches.value());
  if (plan.serves) {
    json.key("serves");
    write_served(json, *plan.serves);
  }
  if (plan.larger_needle) {
    json.key("largerNeedle");
    write_larger_needle(json, *plan.larger_needle);
  }
  json.key("lines");
  write_lines(json, plan.lines);
  json.key("rounds");
  write_rounds(json, plan.rounds);
  json.key("yarn");
  write_yarn(json, plan.yarn);
  json.key("needle");
  write_needle(json, plan.needle);
  if (plan.firmness) json.key("firmness").text(word_of(*plan.firmness));
  json.key("minutes").real(plan.time.minutes());
  json.key("minutesError").real(plan.time_error);
  json.key("cautions");
  write_problems(json, plan.cautions);
  json.key("working");
  write_working(json, plan.working);
  json.close_object();
}

}  // namespace twinround

// How the fit came about: foot, gauge, fabric, count.
#include <utility>

#include "plan_parts.h"
#include "tube.h"

namespace twinround {

namespace {

double real(int count) {
  return static_cast<double>(count);
}

const char* shoe_source(ShoeScale scale) {
  switch (scale) {
    case ShoeScale::mondopoint:
      return "iso-19407";
    case ShoeScale::eu:
      return "european-shoe-table";
    case ShoeScale::us_men:
    case ShoeScale::us_women:
      return "brannock";
    case ShoeScale::uk:
      break;
  }
  return "from-memory";
}

// Collects the workings of one plan: figure, rule, numbers put in, source.
class FitWorker {
 public:
  FitWorker(const PlanRequest& request, const FabricFigures& fabric, const Plan& plan)
      : request_(request), fabric_(fabric), plan_(plan) {}

  void show_foot();
  void show_gauge();
  void show_fabric();
  void show_count();
  std::vector<Working> take() { return std::move(workings_); }

 private:
  void show(const char* figure, const char* rule, std::vector<Number> numbers, const char* source) {
    workings_.push_back({figure, rule, std::move(numbers), source});
  }
  void show_label_gauge();
  double g_s() const { return plan_.gauge.stitches.per_mm(); }
  double g_r() const { return plan_.gauge.rounds.per_mm(); }

  const PlanRequest& request_;
  const FabricFigures& fabric_;
  const Plan& plan_;
  std::vector<Working> workings_;
};

void FitWorker::show_foot() {
  const PlannedFoot& foot = plan_.foot;
  if (foot.length.estimated && request_.foot.shoe) {
    const ShoeRule rule = shoe_rule(request_.foot.shoe->scale);
    show("footLength", "shoe_length",
         {{"size", request_.foot.shoe->size},
          {"stepMm", rule.step.mm()},
          {"offset", rule.offset},
          {"lengthMm", foot.length.value.mm()},
          {"spreadMm", foot.length.spread.mm()}},
         shoe_source(request_.foot.shoe->scale));
  }
  if (foot.ball_girth.estimated) {
    // A girth is only estimated where the wearer is known.
    const GirthLine line = ball_girth_line(request_.foot.body.value_or(Body::child));
    show("ballGirth", "ball_girth_estimate",
         {{"lengthMm", foot.length.value.mm()},
          {"constantMm", line.constant.mm()},
          {"perLength", line.per_length},
          {"girthMm", foot.ball_girth.value.mm()},
          {"spreadMm", foot.ball_girth.spread.mm()}},
         request_.foot.body == Body::child ? "assumption" : "ansur-ii");
  }
}

void FitWorker::show_label_gauge() {
  const YarnCategory& category = fabric_.category;
  show("gauge", "gauge_from_label",
       {{"category", real(category.number)},
        {"stitchesOver4In", real(category.stitches_hi)},
        {"roundsPerStitch", kRoundsPerStitch},
        {"stitchesPerMm", g_s()},
        {"roundsPerMm", g_r()}},
       "cyc-standard-yarn-weight");
  show("gaugeError", "label_error",
       {{"lo", real(category.stitches_lo)},
        {"hi", real(category.stitches_hi)},
        {"relativeError", plan_.gauge.stitches_error}},
       "cyc-standard-yarn-weight");
}

void FitWorker::show_gauge() {
  const std::vector<Reading>& readings = request_.swatch.readings;
  if (plan_.gauge.source == GaugeSource::label) return show_label_gauge();
  double stitches = 0;
  double rounds = 0;
  Length width;
  Length height;
  for (const Reading& reading : readings) {
    stitches += reading.stitches;
    width = width + reading.width;
    rounds += reading.rounds.value_or(0);
    height = height + reading.height.value_or(Length());
  }
  std::vector<Number> numbers = {{"readings", static_cast<double>(readings.size())},
                                 {"stitches", stitches},
                                 {"widthMm", width.mm()},
                                 {"rounds", rounds},
                                 {"heightMm", height.mm()},
                                 {"stitchesPerMm", g_s()},
                                 {"roundsPerMm", g_r()}};
  const bool in_rib = plan_.gauge.source == GaugeSource::rib_swatch;
  if (in_rib) numbers.push_back({"contraction", fabric_.contraction.factor});
  show("gauge", in_rib ? "gauge_from_rib" : "gauge_pooled", std::move(numbers),
       in_rib ? "spencer" : "definition");
  std::vector<Number> errors = {{"readings", static_cast<double>(readings.size())},
                                {"stitches", stitches},
                                {"cv", stitch_scatter(readings)},
                                {"leastCv", kLeastScatter},
                                {"endError", kEndError}};
  if (!request_.swatch.washed) errors.push_back({"washError", kUnwashedStitchError});
  if (in_rib) errors.push_back({"ribError", fabric_.contraction.error});
  errors.push_back({"relativeError", plan_.gauge.stitches_error});
  show("gaugeError", "gauge_error", std::move(errors), "assumption");
}

void FitWorker::show_fabric() {
  if (plan_.yarn.weighed) {
    show("mmPerStitch", "loop_weighed",
         {{"massG", request_.swatch.mass->g()},
          {"massStitches", *request_.swatch.mass_stitches},
          {"ballG", request_.yarn.ball_mass->g()},
          {"ballM", request_.yarn.ball_length->m()},
          {"mmPerStitch", plan_.yarn.loop.mm()}},
         "definition");
  }
  const bool washed = request_.swatch.readings.empty() || request_.swatch.washed;
  std::vector<Number> numbers = {{"ks", washed ? kStitchDensityWashed : kStitchDensityUnwashed},
                                 {"stitchesPerMm", g_s()},
                                 {"roundsPerMm", g_r()},
                                 {"mmPerStitch", fabric_.geometry_loop.mm()}};
  if (fabric_.weighed_loop) {
    numbers.push_back({"apart", *fabric_.weighed_loop / fabric_.geometry_loop - 1.0});
  }
  show(plan_.yarn.weighed ? "geometryMmPerStitch" : "mmPerStitch", "loop_geometry",
       std::move(numbers), "munden-1959");
  show("restGirthMm", "rest_girth",
       {{"finishedGirthMm", plan_.finished_girth.mm()},
        {"contraction", fabric_.contraction.factor},
        {"restGirthMm", plan_.rest_girth.mm()}},
       "spencer");
  if (fabric_.tightness) {
    show("firmness", "firmness",
         {{"tightness", *fabric_.tightness}, {"mmPerStitch", plan_.yarn.loop.mm()}}, "assumption");
  }
}

void FitWorker::show_count() {
  const CountInput input{plan_.foot.ball_girth.value, heel_to_pass(plan_.foot),
                         plan_.gauge.stitches,        fabric_.widest,
                         plan_.rib.repeat(),          request_.girth_ease};
  const bool named = request_.stitch_count.has_value();
  show("stitchCount", named ? "stitch_count_named" : "stitch_count",
       {{"ballGirthMm", input.ball_girth.mm()},
        {"girthEase", input.girth_ease},
        {"stitchesPerMm", g_s()},
        {"ideal", ideal_stitches(input)},
        {"repeat", real(plan_.rib.repeat())},
        {"ease", plan_.girth_ease},
        {"stitches", real(plan_.stitches.value())}},
       "trade-rule");
  show("heelUse", "heel_use",
       {{"heelMm", input.heel_girth.mm()},
        {"stitches", real(plan_.stitches.value())},
        {"widestStitchMm", fabric_.widest.mm()},
        {"passUse", kPassUse},
        {"heelUse", plan_.heel_use}},
       "geometry");
  // Of a widened leg the girth is tested with what stands on the needle at the top.
  show("legFit", "leg_fit",
       {{"girthMm", plan_.leg_fit.widest_girth.mm()},
        {"stitches", real(plan_.edge_stitches.value())},
        {"widestStitchMm", fabric_.widest.mm()},
        {"heightMm", plan_.leg_fit.widest_height.mm()},
        {"passUse", kPassUse},
        {"use", plan_.leg_fit.worst_use}},
       "assumption");
  for (const WideningStage& stage : plan_.widening) {
    show("widening", "widening",
         {{"neededFromMm", stage.needed_from.mm()},
          {"repeats", real(plan_.stitches.value() / plan_.rib.repeat())},
          {"knit", real(stage.rib.knit)},
          {"purl", real(stage.rib.purl)},
          {"stitches", real(stage.rib.stitches.value())},
          {"round", real(stage.round)}},
         "assumption");
  }
}

}  // namespace

std::vector<Working> working_of_fit(const PlanRequest& request, const FabricFigures& fabric,
                                    const Plan& plan) {
  FitWorker worker(request, fabric, plan);
  worker.show_foot();
  worker.show_gauge();
  worker.show_fabric();
  worker.show_count();
  return worker.take();
}

}  // namespace twinround

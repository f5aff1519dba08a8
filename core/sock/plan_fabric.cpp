#include <algorithm>

#include "plan_parts.h"
#include "quadrature.h"

namespace twinround {

namespace {

Problem no_gauge() {
  return {"/swatch", "required", {}, {}, "Give a swatch, or the category on the yarn's label."};
}

Problem stretched_too_narrow(Length width) {
  return {
      "/swatch/stretchedWidthMm",
      "stretched_too_narrow",
      {{"widthMm", width.mm()}},
      {},
      "The stretched width is not wider than the first reading at rest. Pull that same stretch of "
      "stitches as wide as it goes and measure again."};
}

// A rib's own gauge is turned to stockinette before anything is computed with it.
Gauge swatch_gauge(const SwatchInput& swatch, const Contraction& contraction) {
  const Gauge gauge = gauge_from_readings(swatch.readings, swatch.washed);
  if (swatch.fabric == Fabric::stockinette) return gauge;
  return gauge_from_rib(gauge, contraction.factor, contraction.error);
}

// A girth at rest: of a swatch in the rib itself as measured, else with the rib's own doubt added.
double rest_error(const PlanRequest& request, const FabricFigures& fabric) {
  if (fabric.gauge.source == GaugeSource::rib_swatch) {
    return gauge_from_readings(request.swatch.readings, request.swatch.washed).stitches_error;
  }
  return in_quadrature(fabric.gauge.stitches_error, fabric.contraction.error);
}

// How far hands and a ruler may be off in stretching a swatch to its end, relative. ASSUMPTION.
constexpr double kStretchError = 0.05;

// Of the geometric limit: a weighed loop is surer than one from the gauge. A loop goes with the
// square root of both gauges, so half of each error comes through.
double limit_error(const FabricFigures& fabric, Length washed_loop) {
  if (fabric.weighed_loop && *fabric.weighed_loop <= washed_loop) return kWeighedError;
  return in_quadrature(fabric.gauge.stitches_error / 2.0, fabric.gauge.rounds_error / 2.0,
                       kGeometryError);
}

bool stretch_is_usable(const SwatchInput& swatch) {
  return swatch.stretched_width && !swatch.readings.empty() &&
         *swatch.stretched_width > swatch.readings.front().width;
}

std::optional<Length> weighed(const SwatchInput& swatch, const YarnChoice& yarn) {
  if (!swatch.mass || !swatch.mass_stitches || !yarn.ball_length || !yarn.ball_mass) return {};
  return weighed_loop_length(*swatch.mass, *swatch.mass_stitches, *yarn.ball_length,
                             *yarn.ball_mass);
}

std::optional<double> tightness_known(const YarnChoice& yarn, const FabricFigures& fabric) {
  if (yarn.ball_mass && yarn.ball_length) {
    return tightness(tex_of(*yarn.ball_mass, *yarn.ball_length), fabric.loop());
  }
  if (!fabric.category_given) return {};
  const Length reach = Length::from_m(fabric.category.m_per_100g);
  return tightness(tex_of(Mass::from_g(100), reach), fabric.loop());
}

}  // namespace

std::optional<Problem> stretch_problem(const SwatchInput& swatch) {
  if (!swatch.stretched_width || swatch.readings.empty() || stretch_is_usable(swatch)) return {};
  return stretched_too_narrow(swatch.readings.front().width);
}

Result<FabricFigures> plan_fabric(const PlanRequest& request) {
  const SwatchInput& swatch = request.swatch;
  const bool swatched = !swatch.readings.empty();
  const auto named = request.yarn.category ? yarn_category(*request.yarn.category) : std::nullopt;
  if (!swatched && !named) return no_gauge();

  FabricFigures fabric;
  fabric.contraction = rib_contraction(request.rib);
  fabric.gauge = swatched ? swatch_gauge(swatch, fabric.contraction) : gauge_from_label(*named);
  if (request.known_gauge) fabric.gauge = *request.known_gauge;
  const bool in_rib = fabric.gauge.source == GaugeSource::rib_swatch;
  fabric.readings = gauge_of_each(swatch.readings, in_rib ? fabric.contraction.factor : 1.0);
  fabric.rest_error = rest_error(request, fabric);
  fabric.category_given = named.has_value();
  fabric.category = named ? *named : yarn_category_for(fabric.gauge.stitches);

  // A label's gauge is of washed fabric, as printed ones are. ASSUMPTION.
  const bool washed = !swatched || swatch.washed;
  const auto loop = [&fabric](double ks) {
    return loop_length(fabric.gauge.stitches, fabric.gauge.rounds, ks);
  };
  fabric.geometry_loop = loop(washed ? kStitchDensityWashed : kStitchDensityUnwashed);
  fabric.weighed_loop = swatched ? weighed(swatch, request.yarn) : std::nullopt;

  // The fit takes the shorter loop and the washed constant, so that washing or not moves no count.
  const Length washed_loop = loop(kStitchDensityWashed);
  fabric.limit = widest_stitch(std::min(washed_loop, fabric.weighed_loop.value_or(washed_loop)));
  fabric.widest = fabric.limit;
  fabric.tightness = tightness_known(request.yarn, fabric);
  fabric.widest_error = limit_error(fabric, washed_loop);
  if (stretch_is_usable(swatch)) {
    fabric.widest_error = kStretchError;
    fabric.widest = *swatch.stretched_width / swatch.readings.front().stitches;
  }
  return fabric;
}

Result<FabricInHand> fabric_in_hand(const PlanRequest& request) {
  const Result<FabricFigures> fabric = plan_fabric(request);
  std::vector<Problem> problems = fabric.problems();
  if (const auto stretch = stretch_problem(request.swatch)) problems.push_back(*stretch);
  if (!problems.empty()) return problems;
  return FabricInHand{fabric.value().gauge, fabric.value().widest};
}

}  // namespace twinround

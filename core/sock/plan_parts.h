// The rooms of plan.cpp: each fills one part of a Plan from what is already in it. Private to this
// folder.
#pragma once

#include <vector>

#include "plan.h"

namespace twinround {

// The foot as measured, or as shoe and body suggest; required, shoe_out_of_range or
// girth_out_of_range where that is no foot.
Result<PlannedFoot> plan_foot(const FootInput& foot);

// Gauge, and the yarn in a stitch with how wide it goes.
struct FabricFigures {
  Gauge gauge;
  std::vector<ReadingGauge> readings;
  YarnCategory category;
  bool category_given = false;
  Contraction contraction;
  double rest_error = 0;               // relative, of a girth with the rib pulled in
  Length geometry_loop;                // for the yarn, as washed or not
  std::optional<Length> weighed_loop;  // overrules it
  Length limit;                        // half the fit loop: how wide geometry lets a stitch go
  double widest_error = 0;             // relative, of the next
  Length widest;                       // that, or as measured on the stretched swatch

  // sqrt(tex)/l; absent where neither ball nor a named category tells how thick the yarn is. A
  // category read off the gauge would only tell the gauge again.
  std::optional<double> tightness;

  Length loop() const { return weighed_loop.value_or(geometry_loop); }
};
Result<FabricFigures> plan_fabric(const PlanRequest& request);

// A stretched width that is none; plan_fabric then goes by geometry, so that the other problems are
// still found.
std::optional<Problem> stretch_problem(const SwatchInput& swatch);

// How the leg is widened, and with what it then fits; no_room_to_widen or leg_too_wide at
// /legHeightMm where it cannot be.
struct WidenedLeg {
  std::vector<WideningStage> stages;
  LegFit fit;
};
struct LegToWiden {
  Leg leg;
  Length edge_height;
  WideRib rib;
  Length widest_stitch;
  RoundGauge gauge;
  Rounds spiral;
  Rounds cuff;
};
Result<WidenedLeg> widen_leg(const LegToWiden& input);

// The other way out, for a leg whose tube of `n` stitches fails.
LargerNeedle larger_needle(const LegFit& unwidened, StitchGauge gauge, Length needle);

// Metres, grams and balls.
YarnFigures plan_yarn(const PlanRequest& request, const FabricFigures& fabric,
                      const YarnNeed& need);

// Fills Plan::lines and Plan::rounds from its toe, rib, length and widening.
void plan_rounds(Plan& plan, ToeShape shape);

// What must not go unsaid about a finished plan: how it goes on, and what it is made of.
std::vector<Caution> cautions_of_fit(const PlanRequest& request, const FabricFigures& fabric,
                                     const Plan& plan, const CountAdvice* advice);
std::vector<Caution> cautions_of_making(const PlanRequest& request, const FabricFigures& fabric,
                                        const Plan& plan);

// How each figure of a finished plan came about: those of the fit (foot, gauge, fabric, count), and
// those of the making (toe, length, yarn, needle, time).
std::vector<Working> working_of_fit(const PlanRequest& request, const FabricFigures& fabric,
                                    const Plan& plan);
std::vector<Working> working_of_making(const PlanRequest& request, const FabricFigures& fabric,
                                       const Plan& plan);

}  // namespace twinround

#include <cmath>
#include <string>
#include <utility>

#include "plan_parts.h"
#include "rounding.h"
#include "tube.h"

namespace twinround {

namespace {

// Two ways to the yarn in a stitch further apart than this: one input is wrong.
constexpr double kApart = 0.15;
// A kitchen scale reads whole grams: off by 0.29 g (uniform). A swatch so light that this is over 5
// % is the one to doubt.
constexpr double kScaleError = 0.29;
constexpr double kScaleDoubt = 0.05;
// A stretched swatch wider than geometry allows by more than the model's own error was not one
// reading's stitches.
constexpr double kStretchDoubt = 0.15;

std::string percent(double share) {
  const int whole = round_half_up(std::abs(share) * 100.0);
  return std::to_string(whole) + " %";
}

std::string cm(Length length) {
  const int tenths = round_half_up(length.mm());
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " cm";
}

// Collects the cautions of one plan; each member says one kind of thing.
class Cautioner {
 public:
  Cautioner(const PlanRequest& request, const FabricFigures& fabric, const Plan& plan)
      : request_(request), fabric_(fabric), plan_(plan) {}

  void about_heel(const CountAdvice* advice);
  void about_leg();
  void about_ease();
  void about_rib();
  void about_gauge();
  void about_yarn();
  void about_foot();
  std::vector<Caution> take() { return std::move(cautions_); }

 private:
  void say(const char* code, const char* field, std::vector<Number> numbers, std::string message,
           std::vector<Word> words = {}) {
    cautions_.push_back({field, code, std::move(numbers), std::move(words), std::move(message)});
  }
  void about_two_loops();

  const PlanRequest& request_;
  const FabricFigures& fabric_;
  const Plan& plan_;
  std::vector<Caution> cautions_;
};

void Cautioner::about_heel(const CountAdvice* advice) {
  const double use = plan_.heel_use;
  if (clearly_above(use, kStuckUse)) {
    say("heel_will_not_pass", "/stitchCount", {{"heelUse", use}},
        "With this count the sock will not go over the heel: that takes " + percent(use) +
            " of all the stretch there is.");
  } else if (clearly_above(use, kPassUse)) {
    say("heel_tight", "/stitchCount", {{"heelUse", use}},
        "With this count the sock goes over the heel only just: that takes " + percent(use) +
            " of all the stretch there is, and 85 % is the most to plan for.");
  }
  if (!request_.stitch_count && advice && advice->count != advice->by_ease) {
    say("heel_moved_count", "/foot/heelAnkleGirthMm",
        {{"from", static_cast<double>(advice->by_ease.value())},
         {"to", static_cast<double>(advice->count.value())},
         {"heelUse", advice->heel_use_by_ease}},
        "The ease alone asks for " + std::to_string(advice->by_ease.value()) +
            " stitches, but getting those over the heel would take " +
            percent(advice->heel_use_by_ease) + " of all the stretch there is; so " +
            std::to_string(advice->count.value()) + ".");
  }
}

void Cautioner::about_leg() {
  const LegFit& fit = plan_.leg_fit;
  if (!fit.fails_from) return;
  const bool at_edge = fit.widest_height == request_.leg_height;
  const bool measured = at_edge ? request_.foot.calf_girth && request_.foot.ankle_girth
                                : request_.foot.ankle_girth.has_value();
  std::vector<Number> numbers = {{"heightMm", fit.fails_from->mm()},
                                 {"girthMm", fit.widest_girth.mm()},
                                 {"use", fit.worst_use}};
  std::string message = "The leg is too wide for the tube from " + cm(*fit.fails_from) +
                        " above the floor: " + cm(fit.widest_girth) + " round takes " +
                        percent(fit.worst_use) +
                        " of all the stretch there is, and 85 % is the "
                        "most to plan for. Make the leg shorter, or the count larger.";
  const double needed = fit.widest_girth / (fabric_.widest * kPassUse);
  const int step = count_step(plan_.rib.repeat());
  const int count = step * ceil_count(needed / step);
  if (is_count(count, plan_.rib.repeat())) {
    numbers.push_back({"stitches", static_cast<double>(count)});
    message += " " + std::to_string(count) + " stitches would pass.";
  }
  say("leg_too_tight", "/legHeightMm", std::move(numbers), std::move(message),
      {{"place", at_edge ? "edge" : "ankle"}, {"girth", measured ? "measured" : "estimated"}});
}

void Cautioner::about_ease() {
  const double ease = plan_.girth_ease;
  const std::vector<Number> numbers = {{"ease", ease}, {"asked", request_.girth_ease}};
  const std::string asked = "; asked for were " + percent(request_.girth_ease) +
                            (request_.girth_ease > 0 ? " more." : " less.");
  if (clearly_above(kTightestEase, ease) || clearly_above(ease, kLoosestEase)) {
    say("ease_outside", "/rib", numbers,
        "This count makes a tube " + percent(ease) + (ease > 0 ? " larger" : " smaller") +
            " than the foot, outside the 2 to 20 % smaller that a ribbed sock is worn with" +
            asked);
  } else if (clearly_above(std::abs(ease - request_.girth_ease), kEaseTolerance)) {
    say("ease_off", "/rib", numbers,
        "This count makes a tube " + percent(ease) + " smaller than the foot" + asked);
  }
}

void Cautioner::about_rib() {
  const Rib& rib = plan_.rib;
  if (rib.is_moss()) {
    say("moss_stitch", "/rib/roundsPerShift", {},
        "Knit one, purl one moved every round is moss (seed) stitch: it does not lean and does not "
        "pull in.");
  } else if (rib.is_one_by_one() && rib.rounds_per_shift > 0) {
    say("no_lean", "/rib/lean", {},
        "Knit one, purl one leans nowhere: moved left or right it is the same thing.");
  } else if (rib.rounds_per_shift == 1) {
    say("shift_every_round", "/rib/roundsPerShift", {{"contraction", fabric_.contraction.factor}},
        "Moved every round this is no longer a rib: it pulls in little, and its width at rest is a "
        "guess.");
  }
}

void Cautioner::about_gauge() {
  switch (plan_.gauge.source) {
    case GaugeSource::label:
      say("guessed_gauge", "/swatch", {{"category", static_cast<double>(plan_.category)}},
          "The gauge is guessed from the label: knit the toe, then measure it.");
      break;
    case GaugeSource::rib_swatch:
      say("rib_swatch", "/swatch/fabric",
          {{"contraction", fabric_.contraction.factor}, {"error", fabric_.contraction.error}},
          "The stockinette gauge is worked out from a rib swatch: less sure than a plain swatch.");
      break;
    case GaugeSource::swatch:
      say("flat_swatch", "/swatch", {},
          "A swatch knit flat differs from knitting in the round: measure the toe when it is "
          "done.");
      break;
  }
  if (plan_.gauge.source != GaugeSource::label && !request_.swatch.washed) {
    say("unwashed_swatch", "/swatch/washed", {},
        "The swatch was not washed, and a wash can change its gauge: the give or take is wider.");
  }
  const Length measured = fabric_.widest;
  if (request_.swatch.stretched_width && measured > fabric_.limit * (1.0 + kStretchDoubt)) {
    say("stretch_doubtful", "/swatch/stretchedWidthMm",
        {{"measuredMm", measured.mm()}, {"limitMm", fabric_.limit.mm()}},
        "The stretched swatch is wider than its yarn allows. Were those the stitches of the first "
        "reading alone?");
  }
}

void Cautioner::about_two_loops() {
  if (!fabric_.weighed_loop) return;
  const double apart = *fabric_.weighed_loop / fabric_.geometry_loop - 1.0;
  if (!clearly_above(std::abs(apart), kApart)) return;
  const bool light = kScaleError / request_.swatch.mass->g() > kScaleDoubt;
  const char* doubt = light ? "/swatch/massG" : "/swatch/readings/0/widthMm";
  say("yarn_sources_disagree", doubt,
      {{"weighedMm", fabric_.weighed_loop->mm()},
       {"geometryMm", fabric_.geometry_loop.mm()},
       {"apart", apart}},
      "The weighed swatch and the gauge disagree by " + percent(apart) +
          " about the yarn in a stitch. " +
          (light
               ? "Doubt the weighing first: so light a swatch is hard to weigh on a kitchen scale."
               : "Doubt the gauge and the ball's length first: measure the swatch again."),
      {{"doubt", doubt}});
}

void Cautioner::about_yarn() {
  const SwatchInput& swatch = request_.swatch;
  about_two_loops();
  if (swatch.mass && !fabric_.weighed_loop) {
    say("mass_needs_ball", "/yarn/ballM", {},
        "The weighed swatch cannot be used without the grams and metres of the ball.");
  }
  if (fabric_.tightness && firmness_of(*fabric_.tightness) == Firmness::loose) {
    say("loose_fabric", "/swatch/needleMm", {{"tightness", *fabric_.tightness}},
        "For this yarn the fabric is loose: a sock of it will wear through. Try a smaller needle.");
  }
  if (fabric_.tightness && firmness_of(*fabric_.tightness) == Firmness::firm) {
    say("firm_fabric", "/swatch/needleMm", {{"tightness", *fabric_.tightness}},
        "For this yarn the fabric is firm: it will wear well and be slow to knit. Rest your "
        "hands.");
  }
  if (plan_.yarn.mass_guessed) {
    say("yarn_guessed", "/yarn/ballM", {{"category", static_cast<double>(plan_.category)}},
        "The grams are guessed from what 100 g of such yarn usually measures. The ball's label "
        "tells better.");
  }
  if (plan_.yarn.balls && plan_.yarn.balls->just) {
    const Balls& balls = *plan_.yarn.balls;
    say("balls_just", "/yarn/ballM",
        {{"balls", static_cast<double>(balls.count)}, {"spareM", balls.spare.m()}},
        "The number of balls is a close thing: " + std::to_string(balls.count) + " leave " +
            std::to_string(floor_count(balls.spare.m())) + " m to spare.");
  }
  if (!plan_.needle.cable_buy) {
    say("no_cable_long_enough", "/swatch/needleMm", {{"cableMinMm", plan_.needle.cable_least.mm()}},
        "No circular needle sold is long enough for two such socks: share them over two needles.");
  }
}

void Cautioner::about_foot() {
  const PlannedFoot& foot = plan_.foot;
  if (foot.length.estimated || foot.ball_girth.estimated) {
    say("foot_estimated", foot.length.estimated ? "/foot/lengthMm" : "/foot/ballGirthMm",
        {{"lengthMm", foot.length.value.mm()},
         {"lengthSpreadMm", foot.length.spread.mm()},
         {"girthMm", foot.ball_girth.value.mm()},
         {"girthSpreadMm", foot.ball_girth.spread.mm()}},
        "The foot is estimated from a shoe size, a poor stand-in for a measured one. Measure it if "
        "you can.");
  }
  if (foot.heel_girth.estimated) {
    say("girths_estimated", "/foot/heelAnkleGirthMm",
        {{"heelMm", heel_to_pass(foot).mm()}, {"ballMm", foot.ball_girth.value.mm()}},
        "The girth round heel and ankle was not measured: the heel is tested with a large one, " +
            cm(heel_to_pass(foot)) + ".");
  }
}

}  // namespace

// In order of harm: what will not go on first, what is merely unsure last.
std::vector<Caution> plan_cautions(const PlanRequest& request, const FabricFigures& fabric,
                                   const Plan& plan, const CountAdvice* advice) {
  Cautioner cautioner(request, fabric, plan);
  cautioner.about_heel(advice);
  cautioner.about_leg();
  cautioner.about_ease();
  cautioner.about_rib();
  cautioner.about_yarn();
  cautioner.about_foot();
  cautioner.about_gauge();
  return cautioner.take();
}

}  // namespace twinround

// What must not go unsaid about how the sock goes on.
#include <cmath>
#include <string>
#include <utility>

#include "message_words.h"
#include "plan_parts.h"
#include "rounding.h"
#include "tube.h"

namespace twinround {

namespace {

// A share just outside a limit must not read as the limit itself: rounded away from the band, to a
// tenth of a percent.
std::string percent_outside(double ease) {
  const double tenths_real = std::abs(ease) * 1000.0;
  const int tenths =
      ease < kTightestEase || ease > 0 ? ceil_count(tenths_real) : floor_count(tenths_real);
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " %";
}

// Collects the cautions of one plan; each member says one kind of thing.
class FitCautioner {
 public:
  FitCautioner(const PlanRequest& request, const FabricFigures& fabric, const Plan& plan)
      : request_(request), fabric_(fabric), plan_(plan) {}

  void about_heel(const CountAdvice* advice);
  void about_leg();
  void about_ease();
  void about_rib();
  void about_foot();
  std::vector<Caution> take() { return std::move(cautions_); }

 private:
  void say(const char* code, const char* field, std::vector<Number> numbers, std::string message,
           std::vector<Word> words = {}) {
    cautions_.push_back({field, code, std::move(numbers), std::move(words), std::move(message)});
  }

  const PlanRequest& request_;
  const FabricFigures& fabric_;
  const Plan& plan_;
  std::vector<Caution> cautions_;
};

void FitCautioner::about_heel(const CountAdvice* advice) {
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

void FitCautioner::about_leg() {
  if (plan_.widening.empty()) return;
  const WideningStage& first = plan_.widening.front();
  const LegFit& fit = plan_.leg_fit;
  const bool measured = !leg_estimated_at(plan_.foot, fit.widest_height);
  const std::string to = std::to_string(plan_.edge_stitches.value());
  say("leg_widened", "/legHeightMm",
      {{"from", static_cast<double>(plan_.stitches.value())},
       {"to", static_cast<double>(plan_.edge_stitches.value())},
       {"heightMm", first.needed_from.mm()},
       {"girthMm", fit.widest_girth.mm()}},
      "From " + cm(first.needed_from) + " above the floor the leg is too wide for " +
          std::to_string(plan_.stitches.value()) + " stitches, so the rib is widened to " + to +
          (measured ? "." : "; the girth is an estimate: measure it."),
      {{"girth", measured ? "measured" : "estimated"}});
  for (const WideningStage& stage : plan_.widening) {
    if (stage.crossing == 0) continue;
    say("stitch_crosses", "/rib",
        {{"round", static_cast<double>(stage.round)},
         {"stitches", static_cast<double>(stage.crossing)}},
        "After the widening round the halves are uneven: move a stitch across to the other half.");
  }
}

void FitCautioner::about_ease() {
  const double ease = plan_.girth_ease;
  const char* field = request_.stitch_count ? "/stitchCount" : "/rib";
  const std::vector<Number> numbers = {{"ease", ease}, {"asked", request_.girth_ease}};
  const std::string asked = "; asked for were " + percent(request_.girth_ease) +
                            (request_.girth_ease > 0 ? " more." : " less.");
  if (clearly_above(kTightestEase, ease) || clearly_above(ease, kLoosestEase)) {
    say("ease_outside", field, numbers,
        "This count makes a tube " + percent_outside(ease) + (ease > 0 ? " larger" : " smaller") +
            " than the foot, outside the 2 to 20 % smaller that a ribbed sock is worn with" +
            asked);
  } else if (clearly_above(std::abs(ease - request_.girth_ease), kEaseTolerance)) {
    say("ease_off", field, numbers,
        "This count makes a tube " + percent(ease) + " smaller than the foot" + asked);
  }
}

void FitCautioner::about_rib() {
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

void FitCautioner::about_foot() {
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
  if (!foot.heel_girth.estimated && foot.heel_girth.value < foot.ball_girth.value) {
    say("heel_below_ball", "/foot/heelAnkleGirthMm",
        {{"heelMm", foot.heel_girth.value.mm()}, {"ballMm", foot.ball_girth.value.mm()}},
        "The girth round heel and ankle is smaller than round the ball of the foot; on a foot it "
        "is "
        "about a third larger. Measure it again: the sock has to pass it.");
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
std::vector<Caution> cautions_of_fit(const PlanRequest& request, const FabricFigures& fabric,
                                     const Plan& plan, const CountAdvice* advice) {
  FitCautioner cautioner(request, fabric, plan);
  cautioner.about_heel(advice);
  cautioner.about_leg();
  cautioner.about_ease();
  cautioner.about_rib();
  cautioner.about_foot();
  return cautioner.take();
}

}  // namespace twinround

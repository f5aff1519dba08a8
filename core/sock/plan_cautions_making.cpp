// What must not go unsaid about the yarn, the swatch and the needle.
#include <cmath>
#include <string>
#include <utility>

#include "message_words.h"
#include "plan_parts.h"
#include "rounding.h"

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

// Collects the cautions of one plan; each member says one kind of thing.
class MakingCautioner {
 public:
  MakingCautioner(const PlanRequest& request, const FabricFigures& fabric, const Plan& plan)
      : request_(request), fabric_(fabric), plan_(plan) {}

  void about_yarn();
  void about_balls();
  void about_cable();
  void about_gauge();
  std::vector<Caution> take() { return std::move(cautions_); }

 private:
  void say(const char* code, const char* field, std::vector<Number> numbers, std::string message,
           std::vector<Word> words = {}) {
    cautions_.push_back({field, code, std::move(numbers), std::move(words), std::move(message)});
  }
  void about_two_loops();
  void about_substitute();
  void about_firmness();

  const PlanRequest& request_;
  const FabricFigures& fabric_;
  const Plan& plan_;
  std::vector<Caution> cautions_;
};

void MakingCautioner::about_two_loops() {
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

// With the needle to try: the next size the charts name, thinner for a loose fabric, thicker for a
// firm one.
void MakingCautioner::about_firmness() {
  if (!fabric_.tightness) return;
  const Length needle = plan_.needle.name.diameter;
  const Firmness firmness = firmness_of(*fabric_.tightness);
  if (firmness == Firmness::usual) return;
  const bool loose = firmness == Firmness::loose;
  const auto step = loose ? thinner_needle(needle) : thicker_needle(needle);
  std::vector<Number> numbers = {{"tightness", *fabric_.tightness}};
  if (step) numbers.push_back({"tryMm", step->diameter.mm()});
  say(loose ? "loose_fabric" : "firm_fabric", "/swatch/needleMm", std::move(numbers),
      loose ? "For this yarn the fabric is loose: a sock of it will wear through. Try a thinner "
              "needle."
            : "For this yarn the fabric is firm: it will wear well and be slow to knit. Rest your "
              "hands, "
              "or try a thicker needle.");
}

// A substitute that is another thickness makes another fabric, whatever its metres.
void MakingCautioner::about_substitute() {
  if (!plan_.yarn.substitute) return;
  const SubstituteYarn& other = *plan_.yarn.substitute;
  if (clearly_above(std::abs(other.thickness_apart), kSameThickness)) {
    say("substitute_differs", "/yarn/substitute/ballM", {{"apart", other.thickness_apart}},
        "The other yarn is " + percent(other.thickness_apart) +
            (other.thickness_apart > 0 ? " thicker" : " thinner") +
            " than the first: swatch it before you trust this gauge.");
  }
  if (other.balls.just) {
    say("balls_just", "/yarn/substitute/ballM",
        {{"balls", static_cast<double>(other.balls.count)}, {"spareM", other.balls.spare.m()}},
        "Of the other yarn, " + std::to_string(other.balls.count) +
            " balls are a close thing: they leave " +
            std::to_string(floor_count(other.balls.spare.m())) + " m to spare.");
  }
}

void MakingCautioner::about_yarn() {
  const SwatchInput& swatch = request_.swatch;
  about_two_loops();
  if (swatch.mass && !fabric_.weighed_loop) {
    say("mass_needs_ball", "/yarn/ballM", {},
        "The weighed swatch cannot be used without the grams and metres of the ball.");
  }
  about_firmness();
  about_substitute();
  if (plan_.yarn.mass_guessed) {
    say("yarn_guessed", "/yarn/ballM", {{"category", static_cast<double>(plan_.category)}},
        "The grams are guessed from what 100 g of such yarn usually measures. The ball's label "
        "tells better.");
  }
}

void MakingCautioner::about_balls() {
  if (!plan_.yarn.balls || !plan_.yarn.balls->just) return;
  const Balls& balls = *plan_.yarn.balls;
  const Length ball = *request_.yarn.ball_length;
  const std::string count = std::to_string(balls.count);
  const auto number = static_cast<double>(balls.count);
  if (balls.spare < ball / 2.0) {
    say("balls_just", "/yarn/ballM", {{"balls", number}, {"spareM", balls.spare.m()}},
        "The number of balls is a close thing: " + count + " leave " +
            std::to_string(floor_count(balls.spare.m())) + " m to spare.");
    return;
  }
  // The other side of a whole ball: the last one is bought for next to nothing.
  const Length over = ball - balls.spare;
  say("balls_barely_begun", "/yarn/ballM", {{"balls", number}, {"overM", over.m()}},
      "The last of " + count + " balls is needed for " + std::to_string(ceil_count(over.m())) +
          " m only: a little less margin or leg saves it.");
}

void MakingCautioner::about_cable() {
  if (!plan_.needle.cable_buy) {
    say("no_cable_long_enough", "/swatch/needleMm", {{"cableMinMm", plan_.needle.cable_least.mm()}},
        "No circular needle sold is long enough for two such socks: share them over two needles.");
  }
}

void MakingCautioner::about_gauge() {
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

}  // namespace

std::vector<Caution> cautions_of_making(const PlanRequest& request, const FabricFigures& fabric,
                                        const Plan& plan) {
  MakingCautioner cautioner(request, fabric, plan);
  cautioner.about_yarn();
  cautioner.about_balls();
  cautioner.about_cable();
  cautioner.about_gauge();
  return cautioner.take();
}

}  // namespace twinround

#include "odd.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>

#include "gauge.h"
#include "message_words.h"
#include "rounding.h"
#include "tube.h"
#include "yarn_category.h"

namespace twinround {
namespace {

struct Ranked {
  std::string_view code;
  Harm harm = Harm::doubt;
};

// In order of harm. What is not among them is a doubt, and comes last.
constexpr Ranked kByHarm[] = {
    {"heel_will_not_pass", Harm::body},
    {"heel_tight", Harm::body},
    {"tight_on_leg", Harm::body},
    {"ease_outside", Harm::body},  // too small; too large it is the sock's harm, below
    {"yarn_short", Harm::supply},
    {"margin_short", Harm::supply},
    {"no_cable_long_enough", Harm::supply},
    {"gauge_loose", Harm::sock},
    {"gauge_dense", Harm::sock},
    {"loose_fabric", Harm::sock},
    {"firm_fabric", Harm::sock},
    {"ease_outside", Harm::sock},
    {"heel_moved_count", Harm::sock},
    {"ease_off", Harm::sock},
    {"heel_below_ball", Harm::sock},
    {"yarn_sources_disagree", Harm::sock},
    {"stretch_doubtful", Harm::sock},
    {"substitute_differs", Harm::sock},
    {"leg_widened", Harm::sock},
    {"unwashed_swatch", Harm::doubt},
    {"readings_scatter", Harm::doubt},
    {"guessed_gauge", Harm::doubt},
    {"foot_estimated", Harm::doubt},
    {"girths_estimated", Harm::doubt},
};

double number_in(const Problem& problem, std::string_view name) {
  for (const Number& number : problem.numbers) {
    if (number.name == name) return number.value;
  }
  return 0;
}

// Its place in the order of harm; past the end for what is not listed.
std::size_t rank_of(const Problem& what) {
  const bool is_large = what.code == "ease_outside" && number_in(what, "ease") > kLoosestEase;
  for (std::size_t rank = 0; rank < std::size(kByHarm); ++rank) {
    if (kByHarm[rank].code != what.code) continue;
    if (is_large && kByHarm[rank].harm == Harm::body) continue;
    return rank;
  }
  return std::size(kByHarm);
}

bool says(const std::vector<Caution>& cautions, std::string_view code) {
  return std::any_of(cautions.begin(), cautions.end(),
                     [code](const Caution& caution) { return caution.code == code; });
}

class Desk {
 public:
  Desk(const PlanRequest& request, const Plan& plan) : request_(request), plan_(plan) {}

  void about_leg();
  void about_yarn(const InHand& in_hand);
  void about_gauge();
  void about_readings();
  std::vector<Problem> take() { return std::move(found_); }

 private:
  void say(const char* code, const char* field, std::vector<Number> numbers, std::string message,
           std::vector<Word> words = {}) {
    found_.push_back({field, code, std::move(numbers), std::move(words), std::move(message)});
  }

  const PlanRequest& request_;
  const Plan& plan_;
  std::vector<Problem> found_;
};

void Desk::about_leg() {
  const LegFit& fit = plan_.leg_fit;
  if (!clearly_above(fit.worst_use, kWornUse)) return;
  const bool measured = !leg_estimated_at(plan_.foot, fit.widest_height);
  say("tight_on_leg", "/legHeightMm",
      {{"use", fit.worst_use},
       {"girthMm", fit.widest_girth.mm()},
       {"heightMm", fit.widest_height.mm()}},
      "On the leg the sock is stretched to " + percent(fit.worst_use) +
          " of all there is and may press: look for marks on the skin, and take it off a foot that "
          "grows cold or numb.",
      {{"girth", measured ? "measured" : "estimated"}});
}

void Desk::about_yarn(const InHand& in_hand) {
  Length have;
  if (in_hand.mass) {
    have = Length::from_m(1000 * in_hand.mass->g() / plan_.yarn.tex);
  } else if (in_hand.balls && request_.yarn.ball_length) {
    have = *request_.yarn.ball_length * *in_hand.balls;
  } else {
    if (!in_hand.balls) return;
    return say("hand_needs_ball", "/yarn/ballM", {{"balls", *in_hand.balls}},
               "Whether the balls in hand are enough is told by the metres on the label.");
  }
  const YarnNeed& need = plan_.yarn.need;
  const char* field = in_hand.mass ? "/inHand/g" : "/inHand/balls";
  if (clearly_above(need.pair.m(), have.m())) {
    say("yarn_short", field, {{"haveM", have.m()}, {"shortM", (need.pair - have).m()}},
        "The yarn in hand ends before the pair does: " +
            std::to_string(ceil_count((need.pair - have).m())) + " m are missing.");
  } else if (clearly_above(need.with_margin.m(), have.m())) {
    say("margin_short", field, {{"haveM", have.m()}, {"spareM", (have - need.pair).m()}},
        "The yarn in hand is enough by " + std::to_string(floor_count((have - need.pair).m())) +
            " m only, less than the margin asked for.");
  }
}

// A gauge off the label is the category's own.
void Desk::about_gauge() {
  if (!plan_.category_given || plan_.gauge.source == GaugeSource::label) return;
  const auto category = yarn_category(plan_.category);
  if (!category) return;
  const double stitches = plan_.gauge.stitches * kGaugeWidth;
  const double error = stitches * plan_.gauge.stitches_error;
  const bool dense = clearly_above(stitches - error, category->stitches_hi);
  const bool loose = clearly_above(category->stitches_lo, stitches + error);
  if (!dense && !loose) return;
  say(dense ? "gauge_dense" : "gauge_loose", "/swatch/readings",
      {{"stitchesPerMm", plan_.gauge.stitches.per_mm()},
       {"leastPerMm", category->stitches_lo / kGaugeWidth.mm()},
       {"mostPerMm", category->stitches_hi / kGaugeWidth.mm()},
       {"category", static_cast<double>(category->number)},
       {"fits", static_cast<double>(yarn_category_for(plan_.gauge.stitches).number)}},
      std::string(dense ? "More" : "Fewer") +
          " stitches in a width than such yarn is commonly knit with: look at needle, label and "
          "count.");
}

void Desk::about_readings() {
  const double stitches = stitch_scatter(request_.swatch.readings);
  const double rounds = round_scatter(request_.swatch.readings);
  if (!clearly_above(std::max(stitches, rounds), kScatterDoubt)) return;
  say("readings_scatter", "/swatch/readings", {{"stitches", stitches}, {"rounds", rounds}},
      "The readings of the swatch differ by " + percent(std::max(stitches, rounds)) +
          " from one another: count again, away from the edges.");
}

}  // namespace

std::vector<Oddity> oddities(const PlanRequest& request, const Plan& plan, const InHand& in_hand) {
  Desk desk(request, plan);
  desk.about_leg();
  desk.about_yarn(in_hand);
  desk.about_gauge();
  desk.about_readings();
  std::vector<Problem> found = desk.take();
  const bool heel_moved = says(plan.cautions, "heel_moved_count");
  for (const Caution& caution : plan.cautions) {
    // A wider sock than was asked for is then the heel's doing: told once, with its cause.
    if (!heel_moved || caution.code != "ease_off") found.push_back(caution);
  }

  // Rank by rank, not by a ready-made sort: that alone is 7 kB of the module.
  std::vector<Oddity> odd;
  for (std::size_t rank = 0; rank <= std::size(kByHarm); ++rank) {
    const Harm harm = rank < std::size(kByHarm) ? kByHarm[rank].harm : Harm::doubt;
    for (const Problem& what : found) {
      if (rank_of(what) == rank) odd.push_back({harm, what});
    }
  }
  return odd;
}

}  // namespace twinround

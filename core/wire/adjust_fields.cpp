#include "adjust_fields.h"

namespace twinround {
namespace {

// clang-format off
constexpr Field kNeedles[] = {
  {.pointer = "/needles", .about = "The sock on the needles", .need = Need::always},
  {.pointer = "/needles/roundsDone", .about = "Rounds of one sock that are knit",
   .kind = Kind::whole, .need = Need::always, .min = 0, .max = 2000, .step = 1, .unit = "rounds"},
  {.pointer = "/needles/stitches", .about = "Stitches of the toe over the width, of one layer laid flat",
   .kind = Kind::number, .min = 1, .max = 400, .step = 0.25, .unit = "stitches", .partner = "widthMm"},
  {.pointer = "/needles/widthMm", .about = "Width over which they were counted",
   .kind = Kind::number, .min = 10, .max = 500, .step = 0.5, .unit = "mm", .partner = "stitches"},
  {.pointer = "/needles/rounds", .about = "Rounds of the toe over the length",
   .kind = Kind::number, .min = 1, .max = 600, .step = 0.25, .unit = "rounds", .partner = "lengthMm"},
  {.pointer = "/needles/lengthMm", .about = "Length over which they were counted",
   .kind = Kind::number, .min = 10, .max = 500, .step = 0.5, .unit = "mm", .partner = "rounds"},
  {.pointer = "/needles/toeAlone", .about = "The swatch is none of this yarn: the toe counts alone",
   .kind = Kind::yes_no},
  {.pointer = "/needles/gramsLeftA", .about = "Yarn left for the first sock",
   .kind = Kind::number, .min = 0, .max = 2000, .step = 0.5, .unit = "g"},
  {.pointer = "/needles/gramsLeftB", .about = "Yarn left for the second sock",
   .kind = Kind::number, .min = 0, .max = 2000, .step = 0.5, .unit = "g"},
};

constexpr Need kAlways = Need::always;

constexpr Field kReply[] = {
  {.pointer = "", .about = "What the sock on the needles comes to, and how to go on"},
  {.pointer = "/measured", .about = "What the toe says; absent where it was not measured"},
  {.pointer = "/measured/swatch", .about = "The gauge that the sock was begun with", .need = kAlways},
  {.pointer = "/measured/swatch/stitchesPerMm", .about = "Stitches in a width", .kind = Kind::number, .need = kAlways, .unit = "1/mm"},
  {.pointer = "/measured/swatch/relativeError", .about = "Relative standard error of the stitches", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/swatch/roundsPerMm", .about = "Rounds in a height", .kind = Kind::number, .need = kAlways, .unit = "1/mm"},
  {.pointer = "/measured/swatch/roundsRelativeError", .about = "Relative standard error of the rounds", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/toe", .about = "The toe by itself; what was not measured is left out", .need = kAlways},
  {.pointer = "/measured/toe/stitchesPerMm", .about = "Stitches in a width", .kind = Kind::number, .unit = "1/mm"},
  {.pointer = "/measured/toe/relativeError", .about = "Relative standard error of the stitches", .kind = Kind::number},
  {.pointer = "/measured/toe/roundsPerMm", .about = "Rounds in a height", .kind = Kind::number, .unit = "1/mm"},
  {.pointer = "/measured/toe/roundsRelativeError", .about = "Relative standard error of the rounds", .kind = Kind::number},
  {.pointer = "/measured/together", .about = "What all the rest goes by: both, each weighed by how sure it is, or the toe alone in what was measured of it", .need = kAlways},
  {.pointer = "/measured/together/stitchesPerMm", .about = "Stitches in a width", .kind = Kind::number, .need = kAlways, .unit = "1/mm"},
  {.pointer = "/measured/together/relativeError", .about = "Relative standard error of the stitches", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/together/roundsPerMm", .about = "Rounds in a height", .kind = Kind::number, .need = kAlways, .unit = "1/mm"},
  {.pointer = "/measured/together/roundsRelativeError", .about = "Relative standard error of the rounds", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/errorsApart", .about = "How many standard errors swatch and toe lie apart, stitches or rounds", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/isApart", .about = "Whether that is more than one fabric allows; never told of a swatch of another yarn", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/measured/byToeAlone", .about = "Whether the toe counts alone: they lie apart, or the swatch is none of this yarn", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/measured/advised", .about = "The way to go on", .kind = Kind::word, .need = kAlways, .words = "keep | change | restart"},
  {.pointer = "/measured/ways", .about = "The ways to go on, what each costs and gives", .kind = Kind::list, .need = kAlways, .min = 1, .max = 3},
  {.pointer = "/measured/ways/*", .about = "One way"},
  {.pointer = "/measured/ways/*/way", .about = "Which", .kind = Kind::word, .need = kAlways, .words = "keep | change | restart"},
  {.pointer = "/measured/ways/*/stitchCount", .about = "Stitches in a round of one sock", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/measured/ways/*/girthEase", .about = "How much wider or narrower than the ball girth", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/ways/*/finishedGirthMm", .about = "Girth laid flat", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/measured/ways/*/heelUse", .about = "Share of all stretch that the heel takes", .kind = Kind::number, .need = kAlways},
  {.pointer = "/measured/ways/*/passes", .about = "Whether it passes heel and leg", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/measured/ways/*/totalRounds", .about = "Rounds of one sock", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/fromRound", .about = "Last round that stays as it is knit; 0: none", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/roundsLost", .about = "Rounds to unpick", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/roundsToGo", .about = "Rounds still to knit", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/roundsOver", .about = "Rounds knit already beyond what this way asks for", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/steps", .about = "Rounds of the toe to work otherwise than it was begun", .kind = Kind::list, .need = kAlways},
  {.pointer = "/measured/ways/*/steps/*", .about = "One of them"},
  {.pointer = "/measured/ways/*/steps/*/round", .about = "Which round of the sock", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/steps/*/added", .about = "Whether it is a round more than the toe was begun with", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/measured/ways/*/steps/*/begunSides", .about = "Which sides of the tube it was to widen", .kind = Kind::word, .need = kAlways, .words = "none | both | great | little"},
  {.pointer = "/measured/ways/*/steps/*/sides", .about = "Which it widens now", .kind = Kind::word, .need = kAlways, .words = "none | both | great | little"},
  {.pointer = "/measured/ways/*/steps/*/stitches", .about = "Stitches of one sock after it", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/measured/ways/*/ribFromRound", .about = "First round of the rib; from it on all is as in this way's own plan", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/measured/ways/*/mPerPair", .about = "Yarn of the pair, what is knit included", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/measured/ways/*/gPerPair", .about = "The same on a scale", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/measured/ways/*/mToGo", .about = "Yarn of the pair still to knit, bind-off and tails included", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/measured/ways/*/gToGo", .about = "The same on a scale", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/measured/ways/*/minutesToGo", .about = "Knitting time of the pair from here", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/yarnGuessed", .about = "Whether metres to grams are guessed from the category", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/yarnLeft", .about = "What the yarn on the scale still makes; one for each sock that was weighed", .kind = Kind::list, .need = kAlways, .max = 2},
  {.pointer = "/yarnLeft/*", .about = "One sock"},
  {.pointer = "/yarnLeft/*/sock", .about = "Which", .kind = Kind::word, .need = kAlways, .words = "a | b"},
  {.pointer = "/yarnLeft/*/g", .about = "Yarn left, as it was weighed", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/yarnLeft/*/m", .about = "The same as a length", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/yarnLeft/*/keptBackM", .about = "Kept back for the bind-off and its tail", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/yarnLeft/*/keptBackG", .about = "The same on a scale: there knitting ends", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/yarnLeft/*/rounds", .about = "Rounds that it still makes", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/lastRound", .about = "Round of the sock after which to bind off", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/roundsToGo", .about = "Rounds of the plan not yet knit", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/roundsShort", .about = "Rounds of the plan that it does not reach", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/roundsOver", .about = "Rounds that it makes beyond the plan", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/leftOverM", .about = "Yarn left once the plan is knit and bound off; 0 where it falls short", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/yarnLeft/*/roundsToUnpick", .about = "Rounds that give back what the bind-off takes", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/legHeightMm", .about = "Floor to edge, if the sock ends there", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/yarnLeft/*/reachesLeg", .about = "Whether that is above the bend of the ankle", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/yarnLeft/*/roundToJoin", .about = "Last round at whose beginning a new ball can be joined; 0: none", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
};
// clang-format on

}  // namespace

std::vector<Field> adjust_request_fields() {
  const std::span<const Field> plan = request_fields();
  std::vector<Field> fields(plan.begin(), plan.end());
  fields.insert(fields.end(), std::begin(kNeedles), std::end(kNeedles));
  return fields;
}

std::span<const Field> adjust_reply_fields() {
  return kReply;
}

}  // namespace twinround

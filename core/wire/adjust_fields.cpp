#include "adjust_fields.h"

namespace twinround {
namespace {

// clang-format off
constexpr Field kNeedles[] = {
  {.pointer = "/needles", .about = "The sock on the needles", .need = Need::always},
  {.pointer = "/needles/roundsDone", .about = "Rounds of one sock that are knit",
   .kind = Kind::whole, .need = Need::always, .min = 0, .max = 2000, .step = 1, .unit = "rounds"},
  {.pointer = "/needles/stitches", .about = "Stitches of the toe over the width, of one layer laid flat",
   .kind = Kind::number, .need = Need::always, .min = 1, .max = 400, .step = 0.25, .unit = "stitches"},
  {.pointer = "/needles/widthMm", .about = "Width over which they were counted",
   .kind = Kind::number, .need = Need::always, .min = 10, .max = 500, .step = 0.5, .unit = "mm"},
  {.pointer = "/needles/rounds", .about = "Rounds of the toe over the length",
   .kind = Kind::number, .min = 1, .max = 600, .step = 0.25, .unit = "rounds", .partner = "lengthMm"},
  {.pointer = "/needles/lengthMm", .about = "Length over which they were counted",
   .kind = Kind::number, .min = 10, .max = 500, .step = 0.5, .unit = "mm", .partner = "rounds"},
  {.pointer = "/needles/gramsLeftA", .about = "Yarn left for the first sock",
   .kind = Kind::number, .min = 0, .max = 2000, .step = 0.5, .unit = "g"},
  {.pointer = "/needles/gramsLeftB", .about = "Yarn left for the second sock",
   .kind = Kind::number, .min = 0, .max = 2000, .step = 0.5, .unit = "g"},
};

constexpr Need kAlways = Need::always;

constexpr Field kReply[] = {
  {.pointer = "", .about = "What the sock on the needles comes to, and how to go on"},
  {.pointer = "/gauge", .about = "Swatch and toe together, each weighed by how sure it is", .need = kAlways},
  {.pointer = "/gauge/stitchesPerMm", .about = "Stitches in a width", .kind = Kind::number, .need = kAlways, .unit = "1/mm"},
  {.pointer = "/gauge/roundsPerMm", .about = "Rounds in a height", .kind = Kind::number, .need = kAlways, .unit = "1/mm"},
  {.pointer = "/gauge/relativeError", .about = "Relative standard error of the stitches", .kind = Kind::number, .need = kAlways},
  {.pointer = "/gauge/roundsRelativeError", .about = "Relative standard error of the rounds", .kind = Kind::number, .need = kAlways},
  {.pointer = "/gauge/errorsApart", .about = "How many standard errors swatch and toe lie apart, stitches or rounds", .kind = Kind::number, .need = kAlways},
  {.pointer = "/gauge/isApart", .about = "Whether that is more than one fabric allows", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/advised", .about = "The way to go on", .kind = Kind::word, .need = kAlways, .words = "keep | change | restart"},
  {.pointer = "/ways", .about = "The ways to go on, what each costs and gives", .kind = Kind::list, .need = kAlways, .min = 1, .max = 3},
  {.pointer = "/ways/*", .about = "One way"},
  {.pointer = "/ways/*/way", .about = "Which", .kind = Kind::word, .need = kAlways, .words = "keep | change | restart"},
  {.pointer = "/ways/*/stitchCount", .about = "Stitches in a round of one sock", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/ways/*/girthEase", .about = "How much wider or narrower than the ball girth", .kind = Kind::number, .need = kAlways},
  {.pointer = "/ways/*/finishedGirthMm", .about = "Girth laid flat", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/ways/*/heelUse", .about = "Share of all stretch that the heel takes", .kind = Kind::number, .need = kAlways},
  {.pointer = "/ways/*/passes", .about = "Whether it passes heel and leg", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/ways/*/totalRounds", .about = "Rounds of one sock", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/ways/*/roundsToGo", .about = "Rounds still to knit", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/ways/*/roundsLost", .about = "Rounds to unpick", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/ways/*/increaseRounds", .about = "Increase rounds to work before the rib", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/ways/*/mPerPair", .about = "Yarn of the pair, what is knit included", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/ways/*/minutesToGo", .about = "Knitting time of the pair from here", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/yarnLeft", .about = "What the yarn on the scale still makes; one for each sock that was weighed", .kind = Kind::list, .need = kAlways, .max = 2},
  {.pointer = "/yarnLeft/*", .about = "One sock"},
  {.pointer = "/yarnLeft/*/sock", .about = "Which", .kind = Kind::word, .need = kAlways, .words = "a | b"},
  {.pointer = "/yarnLeft/*/m", .about = "Yarn left", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/yarnLeft/*/keptBackM", .about = "Kept back for the bind-off and its tail", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/yarnLeft/*/rounds", .about = "Rounds that it still makes", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/roundsShort", .about = "Rounds of the plan that it does not reach", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/roundsToUnpick", .about = "Rounds that give back what the bind-off takes", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/yarnLeft/*/legHeightMm", .about = "Floor to edge, if the sock ends with the last of them", .kind = Kind::number, .need = kAlways, .unit = "mm"},
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

#include "reply_fields.h"

namespace twinround {
namespace {

constexpr Kind kObject = Kind::object;
constexpr Kind kList = Kind::list;
constexpr Kind kReal = Kind::number;
constexpr Kind kWhole = Kind::whole;
constexpr Kind kYesNo = Kind::yes_no;
constexpr Kind kWord = Kind::word;
constexpr Kind kNamed = Kind::named;

constexpr double kNoEnd = 0;  // of a list: as many as there are

constexpr Field has(std::string_view pointer, Kind kind, std::string_view unit,
                    std::string_view about) {
  Field field;
  field.pointer = pointer;
  field.kind = kind;
  field.need = Need::always;
  field.unit = unit;
  field.about = about;
  return field;
}

constexpr Field may_have(std::string_view pointer, Kind kind, std::string_view unit,
                         std::string_view about) {
  Field field = has(pointer, kind, unit, about);
  field.need = Need::optional;
  return field;
}

constexpr Field words(Field field, std::string_view allowed) {
  field.words = allowed;
  return field;
}

constexpr Field list(std::string_view pointer, double min, double max, std::string_view about) {
  Field field = has(pointer, kList, "", about);
  field.min = min;
  field.max = max;
  return field;
}

// Described by a definition of the schema.
constexpr Field named(std::string_view pointer, std::string_view definition) {
  return words(has(pointer, kNamed, "", ""), definition);
}

constexpr Field kFields[] = {
    has("", kObject, "", "The plan of a pair of socks"),
    has("/gauge", kObject, "", "Stockinette gauge that everything is computed with"),
    has("/gauge/stitchesPerMm", kReal, "1/mm", "Stitches in a width"),
    has("/gauge/roundsPerMm", kReal, "1/mm", "Rounds in a height"),
    has("/gauge/relativeError", kReal, "", "Relative standard error of the stitches"),
    has("/gauge/roundsRelativeError", kReal, "", "Relative standard error of the rounds"),
    words(has("/gauge/from", kWord, "", "What the gauge was worked out from"),
          "swatch | rib-swatch | label"),
    list("/gauge/readings", 0, 12,
         "Each reading's own gauge, turned to stockinette like the whole"),
    has("/gauge/readings/*", kObject, "", "One reading"),
    has("/gauge/readings/*/stitchesPerMm", kReal, "1/mm", "Its stitches in a width"),
    may_have("/gauge/readings/*/roundsPerMm", kReal, "1/mm", "Its rounds in a height"),
    has("/category", kWhole, "", "Yarn weight category, given or pointed to by the gauge"),
    has("/categoryGiven", kYesNo, "", "Whether the category was given"),

    has("/foot", kObject, "", "The foot as the plan used it"),
    has("/foot/lengthMm", kReal, "mm", "Length of the foot"),
    has("/foot/lengthEstimated", kYesNo, "", "Whether it is estimated, not measured"),
    may_have("/foot/lengthSpreadMm", kReal, "mm", "Give or take of the estimate"),
    has("/foot/ballGirthMm", kReal, "mm", "Girth round the ball of the foot"),
    has("/foot/ballGirthEstimated", kYesNo, "", "Whether it is estimated, not measured"),
    may_have("/foot/ballGirthSpreadMm", kReal, "mm", "Give or take of the estimate"),
    has("/foot/heelAnkleGirthMm", kReal, "mm", "Girth round heel and ankle, for the drawing"),
    has("/foot/heelAnkleGirthEstimated", kYesNo, "", "Whether it is estimated, not measured"),
    has("/foot/heelToPassMm", kReal, "mm",
        "The girth that the heel is tested with: larger than the last where that is estimated"),
    has("/foot/ankleGirthMm", kReal, "mm", "Girth of the ankle"),
    has("/foot/ankleGirthEstimated", kYesNo, "", "Whether it is estimated, not measured"),
    has("/foot/calfGirthMm", kReal, "mm", "Girth of the calf"),
    has("/foot/calfGirthEstimated", kYesNo, "", "Whether it is estimated, not measured"),

    has("/rib", kObject, "", "The rib as asked for"),
    has("/rib/knit", kWhole, "stitches", "Knit stitches in a repeat"),
    has("/rib/purl", kWhole, "stitches", "Purl stitches in a repeat"),
    has("/rib/roundsPerShift", kWhole, "rounds",
        "Rounds between two moves by one stitch; 0 is straight"),
    words(has("/rib/lean", kWord, "", "Which way it leans"), "left | right | mirrored"),

    has("/stitchCount", kWhole, "stitches", "Stitches in a round of one sock"),
    may_have("/advisedCount", kWhole, "stitches", "The count advised; absent where none can be"),
    has("/girthEase", kReal, "",
        "Ease of the count: how much wider (+) or narrower (-) than the ball girth, as a share of "
        "it"),
    has("/girthError", kReal, "", "Relative give or take of the girth laid flat"),
    has("/restGirthError", kReal, "", "Likewise of the girth at rest"),
    has("/finishedGirthMm", kReal, "mm", "Girth laid flat in stockinette"),
    has("/restGirthMm", kReal, "mm", "Girth at rest, the rib pulled in"),
    has("/widestGirthMm", kReal, "mm", "Girth past which the fabric cannot stretch"),
    has("/passGirthMm", kReal, "mm", "The largest girth that still counts as passing"),
    has("/heelUse", kReal, "", "Share of the widest girth that passing the heel takes"),
    has("/heelUseError", kReal, "", "Its relative give or take"),
    has("/passUse", kReal, "", "The largest share that still counts as passing"),
    has("/halvesAlike", kYesNo, "", "Whether both halves of a rib round read alike"),
    list("/choices", 0, kNoEnd, "Counts around the plan's own, ascending, itself among them"),
    has("/choices/*", kObject, "", "A count and what it would mean"),
    has("/choices/*/stitches", kWhole, "stitches", "Stitches in a round"),
    has("/choices/*/girthMm", kReal, "mm", "Girth laid flat in stockinette"),
    has("/choices/*/ease", kReal, "", "Ease at the ball of the foot"),
    has("/choices/*/heelUse", kReal, "", "Share of the widest girth that passing the heel takes"),
    has("/choices/*/halvesAlike", kYesNo, "", "Whether both halves of a rib round read alike"),
    has("/choices/*/mPerPair", kReal, "m", "Yarn for the pair"),
    has("/choices/*/minutes", kReal, "min", "Knitting time of the pair"),
    list("/ribsThatFit", 0, kNoEnd,
         "Ribs that would do better; empty unless the rib is the trouble"),
    has("/ribsThatFit/*", kObject, "", "A rib and its count"),
    has("/ribsThatFit/*/knit", kWhole, "stitches", "Knit stitches in a repeat"),
    has("/ribsThatFit/*/purl", kWhole, "stitches", "Purl stitches in a repeat"),
    has("/ribsThatFit/*/stitches", kWhole, "stitches", "Stitches in a round"),
    has("/ribsThatFit/*/ease", kReal, "", "Ease at the ball of the foot"),

    has("/castOn", kObject, "", "The cast-on at the tip of the toe"),
    has("/castOn/wraps", kWhole, "", "Wraps round each needle"),
    has("/castOn/stitches", kWhole, "stitches", "Stitches cast on for one sock"),
    has("/toe", kObject, "", "The toe"),
    has("/toe/rounds", kWhole, "rounds", "Rounds of the toe"),
    has("/toe/increaseRounds", kWhole, "rounds",
        "How many of them increase, by four stitches each; of a left and right toe by two or four"),
    list("/toe/counts", 1, kNoEnd, "Stitches of one sock after each toe round"),
    has("/toe/counts/*", kWhole, "stitches", "Stitches after this round"),
    list("/toe/sides", 1, kNoEnd, "Which sides of the tube each toe round widens"),
    words(has("/toe/sides/*", kWord, "", "Great toe's side, the other, both or none"),
          "none | both | great | little"),
    has("/spiral", kObject, "", "The spiral rib"),
    has("/spiral/rounds", kWhole, "rounds", "Rounds of the spiral rib before any widening"),
    has("/spiral/periodRounds", kWhole, "rounds", "Rounds until the rib stands where it began"),
    may_have("/spiral/pitchDeg", kReal, "degrees",
             "Lean of the rib from upright; 0 for a straight rib, absent for one that moves and "
             "leans nowhere"),
    has("/widening", kObject, "", "The leg from the first widening round to the cuff"),
    has("/widening/rounds", kWhole, "rounds", "Rounds of it; 0 where the leg needs none"),
    list("/widening/stages", 0, kNoEnd, "Each widening, from the foot up"),
    has("/widening/stages/*", kObject, "", "From here on the rib is this wide"),
    has("/widening/stages/*/knit", kWhole, "stitches", "Knit stitches in a repeat"),
    has("/widening/stages/*/purl", kWhole, "stitches", "Purl stitches in a repeat"),
    has("/widening/stages/*/stitches", kWhole, "stitches", "Stitches in a round"),
    has("/widening/stages/*/ribRound", kWhole, "rounds",
        "The widening round, counted from 0 at the first round of the rib"),
    has("/widening/stages/*/neededFromMm", kReal, "mm",
        "Height above the floor from which the narrower tube would not pass"),
    may_have("/widening/stages/*/crossing", kWhole, "stitches",
             "Stitches to move from the first half to the second (+) or back (-) after it"),
    has("/cuff", kObject, "", "The straight cuff"),
    has("/cuff/rounds", kWhole, "rounds", "Rounds of the cuff"),
    has("/totalRounds", kWhole, "rounds", "Rounds of one sock, toe to edge"),
    has("/tryOnRound", kWhole, "rounds",
        "Rounds of one sock that are done when it is tried on past the heel"),
    has("/lengthMm", kReal, "mm", "Length of the sock, tip to edge"),
    has("/heelDepthMm", kReal, "mm", "Depth of the heel, back to bend"),
    has("/leastLegMm", kReal, "mm", "Least leg height for this foot and cuff"),
    has("/backStrain", kReal, "",
        "How much longer the way over the heel is than the sock, as a share of the sock"),
    has("/frontStrain", kReal, "", "Likewise the way over the instep; negative: it bunches"),
    has("/legFit", kObject, "", "The leg inside the tube, floor to edge"),
    has("/legFit/widestGirthMm", kReal, "mm", "The girth that takes most of the stretch"),
    has("/legFit/widestHeightMm", kReal, "mm", "Its height above the floor"),
    has("/legFit/worstUse", kReal, "", "Share of the widest girth that it takes"),
    has("/legFit/widestEstimated", kYesNo, "", "Whether the widest girth hangs on an estimate"),
    has("/legFit/edgeGirthMm", kReal, "mm", "Girth of the leg at the top edge"),
    has("/legFit/edgeEstimated", kYesNo, "", "Whether that hangs on an estimate"),
    has("/edgeStitches", kWhole, "stitches", "Stitches in a round at the top edge"),
    may_have("/serves", kObject, "",
             "Feet of the same build that the finished pair serves; absent where not even the one "
             "it was planned for"),
    has("/serves/footFromMm", kReal, "mm", "Length of the shortest"),
    has("/serves/footToMm", kReal, "mm", "Length of the longest"),
    list("/serves/sizes", 0, 4, "The shoe sizes made for them; of grown-ups only but for eu"),
    has("/serves/sizes/*", kObject, "", "Sizes of one scale"),
    words(has("/serves/sizes/*/scale", kWord, "", "The scale"), "eu | uk | us-women | us-men"),
    has("/serves/sizes/*/from", kReal, "", "The smallest"),
    has("/serves/sizes/*/to", kReal, "", "The largest"),
    may_have("/largerNeedle", kObject, "",
             "In place of widening: the same count on a larger needle, to be swatched anew"),
    has("/largerNeedle/fromMm", kReal, "mm", "Height above the floor from which to knit with it"),
    has("/largerNeedle/stitchesPerMmAtMost", kReal, "1/mm", "The gauge it has to give, or looser"),
    has("/largerNeedle/mm", kReal, "mm", "Diameter to try first"),
    may_have("/largerNeedle/us", Kind::text, "", "Its US name"),
    may_have("/largerNeedle/uk", Kind::text, "", "Its UK name"),

    list("/lines", 1, kNoEnd, "The different rounds there are, each told once"),
    has("/lines/*", kObject, "", "What the needles do in a round of one sock"),
    list("/lines/*/halves", 2, 2, "First and second half, each as runs in knitting order"),
    list("/lines/*/halves/*", 0, kNoEnd, "Runs of one half"),
    named("/lines/*/halves/*/*", "run"),
    list("/lines/*/told", 2, 2, "First and second half as people say it"),
    list("/lines/*/told/*", 0, kNoEnd, "Phrases of one half"),
    has("/lines/*/told/*/*", kObject, "", "Runs said so many times over"),
    list("/lines/*/told/*/*/runs", 1, kNoEnd, "Runs in knitting order"),
    named("/lines/*/told/*/*/runs/*", "run"),
    has("/lines/*/told/*/*/times", kWhole, "", "How many times over"),
    list("/rounds", 1, kNoEnd, "The rounds from toe to edge, equal ones together"),
    has("/rounds/*", kObject, "", "Equal rounds in a row"),
    words(has("/rounds/*/section", kWord, "", "Part of the sock"),
          "toe | spiral | widening | cuff"),
    has("/rounds/*/rounds", kWhole, "rounds", "How many"),
    has("/rounds/*/stitches", kWhole, "stitches", "Stitches on the needles after each"),
    has("/rounds/*/line", kWhole, "", "Place in `lines`, from 0"),
    may_have("/rounds/*/secondLine", kWhole, "",
             "Place in `lines` for the second sock, where it differs"),

    has("/yarn", kObject, "", "Yarn needed"),
    has("/yarn/mmPerStitch", kReal, "mm", "Yarn in one stitch"),
    words(has("/yarn/from", kWord, "", "How that is known"), "loop-geometry | weighed"),
    may_have("/yarn/geometryMmPerStitch", kReal, "mm",
             "Beside a weighed figure, the one of loop geometry"),
    has("/yarn/mPerSock", kReal, "m", "Yarn of one sock"),
    has("/yarn/mPerPair", kReal, "m", "Yarn of the pair"),
    has("/yarn/mWithMargin", kReal, "m", "Yarn to buy for the pair"),
    has("/yarn/mOfLastRound", kReal, "m",
        "Yarn one sock needs to begin its last round: that round, the bind-off and a tail"),
    may_have("/yarn/gPerSock", kReal, "g", "Mass of one sock"),
    may_have("/yarn/gPerPair", kReal, "g", "Mass of the pair"),
    may_have("/yarn/gWithMargin", kReal, "g", "Mass to buy for the pair"),
    may_have("/yarn/massGuessed", kYesNo, "", "True where the grams are guessed from the category"),
    may_have("/yarn/balls", kWhole, "", "Balls to buy"),
    may_have("/yarn/ballsJust", kYesNo, "", "Whether that number is a close thing"),
    may_have("/yarn/spareM", kReal, "m", "What is left of the last ball"),
    has("/yarn/tex", kReal, "tex", "Grams a kilometre, from the ball or the category"),
    has("/yarn/relativeError", kReal, "", "Relative standard error of the need"),
    may_have("/yarn/substitute", kObject, "", "The same sock from another yarn"),
    has("/yarn/substitute/tex", kReal, "tex", "Grams a kilometre"),
    has("/yarn/substitute/thicknessApart", kReal, "",
        "Thicker (+) or thinner (-) than the first, as a share"),
    has("/yarn/substitute/gPerPair", kReal, "g", "Mass of the pair"),
    has("/yarn/substitute/gWithMargin", kReal, "g", "Mass to buy for the pair"),
    has("/yarn/substitute/balls", kWhole, "", "Balls to buy"),
    has("/yarn/substitute/ballsJust", kYesNo, "", "Whether that number is a close thing"),
    has("/yarn/substitute/spareM", kReal, "m", "What is left of the last ball"),
    words(has("/yarn/substitute/firmness", kWord, "", "How firm the fabric would be at this gauge"),
          "loose | usual | firm"),
    list("/yarn/sections", 1, kNoEnd, "Yarn of one sock by section"),
    has("/yarn/sections/*", kObject, "", "A section and its yarn"),
    words(has("/yarn/sections/*/section", kWord, "", "Part of the sock"),
          "castOn | toe | spiral | widening | cuff | bindOff | tails"),
    has("/yarn/sections/*/m", kReal, "m", "Its yarn"),

    has("/needle", kObject, "", "Needle and cable"),
    has("/needle/mm", kReal, "mm", "Diameter of the needle"),
    may_have("/needle/us", Kind::text, "", "Its US name"),
    may_have("/needle/uk", Kind::text, "", "Its UK name"),
    has("/needle/cableMinMm", kReal, "mm", "Least length of the circular needle"),
    may_have("/needle/cableBuyMm", kReal, "mm",
             "The length to buy; absent where none sold is long enough"),
    words(may_have("/firmness", kWord, "",
                   "How firm the fabric is; absent where the yarn's thickness is not known"),
          "loose | usual | firm"),
    has("/minutes", kReal, "min", "Knitting time of the pair"),
    has("/minutesError", kReal, "", "Its relative give or take"),
    list("/cautions", 0, kNoEnd, "What must not go unsaid about this plan, in order of harm"),
    named("/cautions/*", "caution"),
    list("/working", 0, kNoEnd, "How each figure came about"),
    named("/working/*", "working"),
};

}  // namespace

std::span<const Field> plan_fields() {
  return kFields;
}

}  // namespace twinround

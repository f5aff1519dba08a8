#include "stripes_fields.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;

// clang-format off
constexpr Field kReply[] = {
  {.pointer = "", .about = "What was asked of: a repeat, stripes of one's own, leftovers"},
  {.pointer = "/repeat", .about = "A self-striping yarn on the pair"},
  {.pointer = "/repeat/from", .about = "Where the socks' yarn is from", .kind = Kind::word, .need = kAlways, .words = kYarnFromWords},
  {.pointer = "/repeat/repeatM", .about = "Yarn in the shortest repeat", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/bandsA", .about = "The first sock as its ball begins now", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/repeat/bandsA/*", .about = "A band", .kind = Kind::named, .words = "band"},
  {.pointer = "/repeat/bandsB", .about = "The second as its ball begins now", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/repeat/bandsB/*", .about = "A band", .kind = Kind::named, .words = "band"},
  {.pointer = "/repeat/isAlike", .about = "Whether they are alike as the balls begin now", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/repeat/isOpposite", .about = "Whether the socks run through the colours in opposite order", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/repeat/isMirror", .about = "Whether the repeat reads alike forwards and backwards", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/repeat/canMatch", .about = "Whether the socks can be made alike", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/repeat/pullOffB", .about = "Off the second sock's yarn, and they are alike"},
  {.pointer = "/repeat/pullOffB/m", .about = "Yarn", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/pullOffB/g", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/repeat/pullOffA", .about = "Off the first sock's in its place"},
  {.pointer = "/repeat/pullOffA/m", .about = "Yarn", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/pullOffA/g", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/repeat/cut", .about = "Of a ball cut in two: the first sock's part"},
  {.pointer = "/repeat/cut/m", .about = "Yarn", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/cut/g", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/repeat/balls", .about = "Whether the yarn lasts, pulled off as told; first sock, second", .kind = Kind::list, .need = kAlways, .max = 2},
  {.pointer = "/repeat/balls/*", .about = "One sock's yarn"},
  {.pointer = "/repeat/balls/*/holdsM", .about = "What there is for it", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/balls/*/needM", .about = "What the sock takes", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/balls/*/pulledM", .about = "What is pulled off first", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/balls/*/spareM", .about = "What is left over; below 0 so much is missing", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/repeat/balls/*/enough", .about = "`just`: without the margin", .kind = Kind::word, .need = kAlways, .words = "yes | just | no"},

  {.pointer = "/own", .about = "Stripes of plain colours"},
  {.pointer = "/own/bands", .about = "Either sock", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/own/bands/*", .about = "A band", .kind = Kind::named, .words = "band"},
  {.pointer = "/own/colours", .about = "What each colour takes", .kind = Kind::list, .need = kAlways, .min = 1, .max = 24},
  {.pointer = "/own/colours/*", .about = "One colour"},
  {.pointer = "/own/colours/*/colour", .about = "Which", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/own/colours/*/bands", .about = "Bands of it on one sock", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/own/colours/*/mPerPair", .about = "Yarn", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/own/colours/*/gPerPair", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/own/changes", .about = "Changes of colour on one sock", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/own/moreIfCutM", .about = "More for the pair, if the yarn is cut at every change: two tails each", .kind = Kind::number, .need = kAlways, .unit = "m"},

  {.pointer = "/leftovers", .about = "Leftovers laid from the toe up, with as few joins as there can be"},
  {.pointer = "/leftovers/reaches", .about = "Whether they reach the planned edge", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leftovers/keepsMargin", .about = "Whether they do with the margin kept; else they just reach, laid without it", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leftovers/rounds", .about = "Rounds of each sock that they make, bound off", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/leftovers/joins", .about = "Joins on one sock", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/leftovers/joinsInside", .about = "Of those, within toe or cuff", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/leftovers/missingM", .about = "What they do not reach with their margin kept, in a further yarn, for the pair with its own", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/leftovers/legHeightMm", .about = "Floor to edge of the sock they make", .kind = Kind::number, .unit = "mm"},
  {.pointer = "/leftovers/bands", .about = "Either sock; the colour is the lot, from 1", .kind = Kind::list, .need = kAlways},
  {.pointer = "/leftovers/bands/*", .about = "A band", .kind = Kind::named, .words = "band"},
  {.pointer = "/leftovers/parts", .about = "The same by part of the sock", .kind = Kind::list, .need = kAlways},
  {.pointer = "/leftovers/parts/*", .about = "A lot in a part"},
  {.pointer = "/leftovers/parts/*/lot", .about = "Which, from 1", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/leftovers/parts/*/section", .about = "The part", .kind = Kind::word, .need = kAlways, .words = "toe | spiral | widening | cuff"},
  {.pointer = "/leftovers/parts/*/fromRound", .about = "First round", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/leftovers/parts/*/toRound", .about = "Last round", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/leftovers/lots", .about = "The lots as they were told", .kind = Kind::list, .need = kAlways, .min = 1, .max = 12},
  {.pointer = "/leftovers/lots/*", .about = "One"},
  {.pointer = "/leftovers/lots/*/mPerSock", .about = "Half of it", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/leftovers/lots/*/usedM", .about = "What one sock takes of it, tails included; 0 where it is not needed", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/leftovers/lots/*/makesToe", .about = "Whether it would make both toes by itself", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leftovers/lots/*/makesSpiral", .about = "Whether it would make both ribs up to the cuff or to where they widen", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leftovers/lots/*/makesWidening", .about = "Whether it would make what is wider", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leftovers/lots/*/makesCuff", .about = "Whether it would make both cuffs and bind them off", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/leftovers/lots/*/thicknessApart", .about = "How much thicker than the sock's yarn, as a share; where both are known", .kind = Kind::number},
  {.pointer = "/leftovers/lots/*/isOtherThickness", .about = "Whether that is too much to share its gauge", .kind = Kind::yes_no},
};

constexpr Field kBand[] = {
  {.pointer = "", .about = "Yarn of one colour on a sock, in one piece; a round's share is what is knit of it when the colour changes"},
  {.pointer = "/colour", .about = "Which", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/m", .about = "Yarn, tails, cast-on and bind-off included", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/fromRound", .about = "The round it begins in", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/fromShare", .about = "How much of that round is knit before it", .kind = Kind::number, .need = kAlways},
  {.pointer = "/fromHalf", .about = "In which half of that round it begins: 1 or 2", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/toRound", .about = "The round it ends in", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/toShare", .about = "How much of that round is knit with its end", .kind = Kind::number, .need = kAlways},
};
// clang-format on

}  // namespace

std::span<const Field> stripes_reply_fields() {
  return kReply;
}

std::span<const Field> band_fields() {
  return kBand;
}

}  // namespace twinround

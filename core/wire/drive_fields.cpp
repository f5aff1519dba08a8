#include "drive_fields.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;

// clang-format off
constexpr Field kDrive[] = {
  {.pointer = "/drive", .about = "Many feet that nobody has measured", .need = kAlways},
  {.pointer = "/drive/pairs", .about = "Pairs wanted",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 10000, .step = 1},
  {.pointer = "/drive/groups", .about = "For whom", .kind = Kind::list, .need = kAlways, .min = 1, .max = 12},
  {.pointer = "/drive/groups/*", .about = "One group of people"},
  {.pointer = "/drive/groups/*/who", .about = "Who they are",
   .kind = Kind::word, .need = kAlways, .words = "woman | man | child"},
  {.pointer = "/drive/groups/*/ageYears", .about = "Age of the children",
   .kind = Kind::whole, .min = 2, .max = 17, .step = 1, .unit = "years"},
  {.pointer = "/drive/groups/*/share", .about = "How many of the feet are theirs, in parts of any size",
   .kind = Kind::number, .min = 0.01, .max = 10000, .step = 0.01, .standard = "1"},
  {.pointer = "/drive/sizes", .about = "Sizes to make; left out, as few as serve the wanted share",
   .kind = Kind::whole, .min = 1, .max = 12, .step = 1},
  {.pointer = "/drive/wantedShare", .about = "Share of the feet to serve",
   .kind = Kind::number, .min = 0.1, .max = 0.999, .step = 0.01, .standard = "0.9"},
  {.pointer = "/drive/legOfFoot", .about = "Height of the top edge in foot lengths, where /legHeightMm does not give one height for all",
   .kind = Kind::number, .min = 0.2, .max = 3, .step = 0.05, .standard = "0.8"},
  {.pointer = "/drive/lots", .about = "Wool at hand", .kind = Kind::list, .max = 12},
  {.pointer = "/drive/lots/*", .about = "One lot of it; `m`, or else `g`: then of `mPer100G`, or as thick as the sock's yarn"},
  {.pointer = "/drive/lots/*/m", .about = "Yarn in it",
   .kind = Kind::number, .min = 5, .max = 1e6, .step = 1, .unit = "m"},
  {.pointer = "/drive/lots/*/g", .about = "Its mass",
   .kind = Kind::number, .min = 5, .max = 1e6, .step = 1, .unit = "g"},
  {.pointer = "/drive/lots/*/mPer100G", .about = "Yarn in 100 g of it",
   .kind = Kind::number, .min = 5, .max = 5000, .step = 1, .unit = "m", .partner = "g"},
  {.pointer = "/drive/lots/*/category", .about = "Its weight category; left out, its thickness tells whether it is the sock's yarn; neither told, it is",
   .kind = Kind::whole, .min = 0, .max = 7, .step = 1},
};

constexpr Field kReply[] = {
  {.pointer = "", .about = "Sizes for many feet"},
  {.pointer = "/wantedShare", .about = "Share of the feet that was to be served", .kind = Kind::number, .need = kAlways},
  {.pointer = "/legOfFoot", .about = "Height of the top edge in foot lengths; absent where one height is for all", .kind = Kind::number},
  {.pointer = "/share", .about = "Share of all feet that the sizes serve, each foot counted once", .kind = Kind::number, .need = kAlways},
  {.pointer = "/shareError", .about = "Give or take of every share, against the feet as surveyed", .kind = Kind::number, .need = kAlways},
  {.pointer = "/atMost", .about = "No choice of so many sizes serves more", .kind = Kind::number, .need = kAlways},
  {.pointer = "/isReached", .about = "Whether the wanted share is reached", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/isFewest", .about = "Whether fewer sizes that reach it are ruled out", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/shareByNumber", .about = "What 1, 2, ... sizes serve, each wider and longer than the last, up to where another adds nothing", .kind = Kind::list, .need = kAlways},
  {.pointer = "/shareByNumber/*", .about = "A share", .kind = Kind::number},
  {.pointer = "/sizes", .about = "The sizes, narrow to wide", .kind = Kind::list, .need = kAlways, .min = 1, .max = 12},
  {.pointer = "/sizes/*", .about = "One size"},
  {.pointer = "/sizes/*/pairs", .about = "Pairs of it", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/sizes/*/stitchCount", .about = "Stitches in a round of one sock", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/sizes/*/totalRounds", .about = "Rounds of one sock", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/sizes/*/footMm", .about = "Foot length it is made for", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/ballGirthMm", .about = "Ball girth that it fits with 10 % of ease", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/legHeightMm", .about = "Floor to top edge on that foot", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/lengthMm", .about = "Length of the sock", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/finishedGirthMm", .about = "Girth laid flat", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/serves", .about = "Share of all feet that it serves, whatever the other sizes do", .kind = Kind::number, .need = kAlways},
  {.pointer = "/sizes/*/share", .about = "Share of all feet counted for it, each foot once", .kind = Kind::number, .need = kAlways},
  {.pointer = "/sizes/*/women", .about = "Women's part of that share", .kind = Kind::number, .need = kAlways},
  {.pointer = "/sizes/*/men", .about = "Men's", .kind = Kind::number, .need = kAlways},
  {.pointer = "/sizes/*/children", .about = "Children's", .kind = Kind::number, .need = kAlways},
  {.pointer = "/sizes/*/band", .about = "What goes on its band", .need = kAlways},
  {.pointer = "/sizes/*/band/footFromMm", .about = "Foot length of the feet counted for it, 5th percentile", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/band/footToMm", .about = "95th percentile", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/band/fitsFromMm", .about = "Shortest foot that it serves", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/band/fitsToMm", .about = "Longest foot", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/band/ballFromMm", .about = "Smallest ball girth that it serves", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/band/ballToMm", .about = "Largest, where a median heel goes with it", .kind = Kind::number, .need = kAlways, .unit = "mm"},
  {.pointer = "/sizes/*/band/shoes", .about = "Whole shoe sizes of the feet counted for it", .kind = Kind::list, .need = kAlways, .max = 4},
  {.pointer = "/sizes/*/band/shoes/*", .about = "One scale"},
  {.pointer = "/sizes/*/band/shoes/*/scale", .about = "Which", .kind = Kind::word, .need = kAlways, .words = "eu | uk | us-women | us-men"},
  {.pointer = "/sizes/*/band/shoes/*/from", .about = "Smallest size", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/sizes/*/band/shoes/*/to", .about = "Largest size", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/sizes/*/mPerPair", .about = "Yarn of a pair, with the margin", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/sizes/*/m", .about = "Yarn of all its pairs, with the margin", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/sizes/*/g", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/sizes/*/minutes", .about = "Knitting time of a pair", .kind = Kind::number, .need = kAlways, .unit = "min"},
  {.pointer = "/wool", .about = "Wool for all pairs, with the margin", .need = kAlways},
  {.pointer = "/wool/m", .about = "Its length", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/wool/g", .about = "Its mass", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/wool/massGuessed", .about = "Whether the grams are guessed from the category", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/wool/balls", .about = "Balls to buy; absent where the ball is not known", .kind = Kind::whole},
  {.pointer = "/atHand", .about = "What the lots make of the pairs, each pair from one lot; absent without lots"},
  {.pointer = "/atHand/pairs", .about = "Pairs in all", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/atHand/pairsAtMost", .about = "No filling of the lots makes more", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/atHand/pairsOfSize", .about = "Of each size, in their order", .kind = Kind::list, .need = kAlways},
  {.pointer = "/atHand/pairsOfSize/*", .about = "Pairs", .kind = Kind::whole},
  {.pointer = "/atHand/lots", .about = "Each lot, in the order of the request", .kind = Kind::list, .need = kAlways},
  {.pointer = "/atHand/lots/*", .about = "One lot"},
  {.pointer = "/atHand/lots/*/m", .about = "Yarn in it, as told or by its thickness", .kind = Kind::number, .need = kAlways, .unit = "m"},
  {.pointer = "/atHand/lots/*/g", .about = "Its mass, likewise", .kind = Kind::number, .need = kAlways, .unit = "g"},
  {.pointer = "/atHand/lots/*/isSameYarn", .about = "Whether it is the sock's yarn; else it makes nothing", .kind = Kind::yes_no, .need = kAlways},
  {.pointer = "/atHand/lots/*/pairsOfSize", .about = "What it is to make of each size", .kind = Kind::list, .need = kAlways},
  {.pointer = "/atHand/lots/*/pairsOfSize/*", .about = "Pairs", .kind = Kind::whole},
  {.pointer = "/atHand/lots/*/alone", .about = "What it would make of each size if it made that alone, however many are wanted", .kind = Kind::list, .need = kAlways},
  {.pointer = "/atHand/lots/*/alone/*", .about = "Pairs", .kind = Kind::whole},
  {.pointer = "/atHand/lots/*/leftM", .about = "Yarn left of it", .kind = Kind::number, .unit = "m"},
  {.pointer = "/cautions", .about = "What must not go unsaid", .kind = Kind::list, .need = kAlways},
  {.pointer = "/cautions/*", .kind = Kind::named, .words = "driveCaution"},
};
// clang-format on

// What a plan asks of its one foot.
bool is_of_one_foot(std::string_view pointer) {
  return pointer.starts_with("/foot") || pointer.starts_with("/yarn/substitute") ||
         pointer == "/girthEase" || pointer == "/stitchCount";
}

}  // namespace

std::vector<Field> drive_request_fields() {
  std::vector<Field> fields;
  for (const Field& field : request_fields()) {
    if (is_of_one_foot(field.pointer)) continue;
    fields.push_back(field);
    if (field.pointer == "/legHeightMm") fields.back().need = Need::optional;
  }
  fields.insert(fields.end(), std::begin(kDrive), std::end(kDrive));
  return fields;
}

std::span<const Field> drive_reply_fields() {
  return kReply;
}

}  // namespace twinround

#include "found_fields.h"

#include "length.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;
constexpr double kMost = kMostRounds;

// clang-format off
constexpr Field kAsked[] = {
  {.pointer = "", .about = "What is seen of a pair whose count was lost, or of a misstep"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = kAlways, .min = kVersion, .max = kVersion, .step = 1},
  {.pointer = "/rib", .about = "The rib, as the plan begins it", .need = kAlways},
  {.pointer = "/rib/knit", .about = "Knit stitches of the repeat",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 12, .step = 1, .unit = "stitches"},
  {.pointer = "/rib/purl", .about = "Purl stitches of the repeat",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 12, .step = 1, .unit = "stitches"},
  {.pointer = "/rib/roundsPerShift", .about = "Rounds between two moves; 0 for a straight rib",
   .kind = Kind::whole, .need = kAlways, .max = 40, .step = 1, .unit = "rounds"},
  {.pointer = "/rib/lean", .about = "Which way it leans",
   .kind = Kind::word, .need = kAlways, .words = kFoundLeanWords},
  {.pointer = "/toeRounds", .about = "Rounds of the toe",
   .kind = Kind::whole, .need = kAlways, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/spiralRounds", .about = "Rounds of the rib that moves, to the cuff",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/plainRounds", .about = "Of those, the ones below the first widening round; left out: all",
   .kind = Kind::whole, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/cuffRounds", .about = "Rounds of the cuff, straight on from the last of them; left out: none",
   .kind = Kind::whole, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/stitches", .about = "Stitches in a round of one sock, as the rib begins",
   .kind = Kind::whole, .need = kAlways, .min = 4, .max = 2000, .step = 1, .unit = "stitches"},

  {.pointer = "/a", .about = "What is seen on sock A; in the rib either `columns` or `place`"},
  {.pointer = "/a/in", .about = "Where its last round is", .kind = Kind::word, .need = kAlways, .words = kSeenInWords},
  {.pointer = "/a/rounds", .about = "In the toe: rounds counted from the cast-on, that apart",
   .kind = Kind::whole, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/a/columns", .about = "In the rib: how often it has stepped over since it began",
   .kind = Kind::whole, .max = kMost, .step = 1},
  {.pointer = "/a/place", .about = "In the rib, where the steps were not counted: which stitch of the repeat a round begins with, 0 for the first knit one",
   .kind = Kind::whole, .max = 23, .step = 1},
  {.pointer = "/a/since", .about = "In the rib: rounds since it last stepped over, the stepping one among them",
   .kind = Kind::whole, .min = 1, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/a/near", .about = "Beside a place: about how many rounds there are in all",
   .kind = Kind::whole, .max = kMost, .step = 1, .unit = "rounds"},

  {.pointer = "/b", .about = "The same of sock B"},
  {.pointer = "/b/in", .about = "Where its last round is", .kind = Kind::word, .need = kAlways, .words = kSeenInWords},
  {.pointer = "/b/rounds", .about = "As of sock A",
   .kind = Kind::whole, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/b/columns", .about = "As of sock A", .kind = Kind::whole, .max = kMost, .step = 1},
  {.pointer = "/b/place", .about = "As of sock A, read in the order sock B is knit",
   .kind = Kind::whole, .max = 23, .step = 1},
  {.pointer = "/b/since", .about = "As of sock A",
   .kind = Kind::whole, .min = 1, .max = kMost, .step = 1, .unit = "rounds"},
  {.pointer = "/b/near", .about = "As of sock A",
   .kind = Kind::whole, .max = kMost, .step = 1, .unit = "rounds"},

  {.pointer = "/misstep", .about = "The rib stepped over at a wrong round, or not at the right one"},
  {.pointer = "/misstep/roundsSince", .about = "Rounds knit since, the wrong one among them",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = kMost, .step = 1, .unit = "rounds"},
};

constexpr Field kAnswered[] = {
  {.pointer = "", .about = "The round found again"},
  {.pointer = "/periodRounds", .about = "Rounds after which the rib looks alike again", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/a", .about = "Sock A, where it was asked"},
  {.pointer = "/a/round", .about = "Rounds knit in all; absent where several look alike", .kind = Kind::whole, .unit = "rounds"},
  {.pointer = "/a/candidates", .about = "Every number of rounds that looks like that", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/a/candidates/*", .about = "One, cast-on apart", .kind = Kind::whole, .unit = "rounds"},
  {.pointer = "/b", .about = "Sock B, where it was asked"},
  {.pointer = "/b/round", .about = "Rounds knit in all; absent where several look alike", .kind = Kind::whole, .unit = "rounds"},
  {.pointer = "/b/candidates", .about = "Every number of rounds that looks like that", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/b/candidates/*", .about = "One, cast-on apart", .kind = Kind::whole, .unit = "rounds"},
  {.pointer = "/apart", .about = "How the two stand to each other, where both rounds are found"},
  {.pointer = "/apart/rounds", .about = "Rounds that one has more", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/apart/alone", .about = "The sock to knit alone, both halves of it, for so many rounds", .kind = Kind::word, .need = kAlways, .words = "a | b | none"},
  {.pointer = "/misstep", .about = "Two ways out of a misstep, of both socks"},
  {.pointer = "/misstep/unpickRounds", .about = "Unpicked: rounds", .kind = Kind::whole, .need = kAlways, .unit = "rounds"},
  {.pointer = "/misstep/unpickStitches", .about = "Unpicked: stitches", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
  {.pointer = "/misstep/hookColumns", .about = "Or in place: columns dropped down and hooked up the other way", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/misstep/hookStitches", .about = "In place: stitches hooked up", .kind = Kind::whole, .need = kAlways, .unit = "stitches"},
};
// clang-format on

}  // namespace

std::span<const Field> found_request_fields() {
  return kAsked;
}

std::span<const Field> found_reply_fields() {
  return kAnswered;
}

}  // namespace twinround

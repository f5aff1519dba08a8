#include "stripes_fields.h"

#include "making_fields.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;

// clang-format off
constexpr Field kHead[] = {
  {.pointer = "", .about = "Stripes or leftovers on a pair"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = kAlways, .min = kVersion, .max = kVersion, .step = 1},
};

constexpr Field kAsked[] = {
  {.pointer = "/tex", .about = "Mass of a kilometre of the sock's yarn",
   .kind = Kind::number, .need = kAlways, .min = 1, .max = 100000, .step = 1, .unit = "g/km"},
  {.pointer = "/margin", .about = "Share kept over what the rounds take",
   .kind = Kind::number, .min = 0, .max = 1, .step = 0.005, .standard = "0.1"},

  {.pointer = "/repeat", .about = "A self-striping yarn"},
  {.pointer = "/repeat/from", .about = "A ball for each sock, both ends of one, or one cut in two",
   .kind = Kind::word, .standard = "two-balls", .words = kYarnFromWords},
  {.pointer = "/repeat/startAM", .about = "Where in the repeat the ball of the first sock begins",
   .kind = Kind::number, .min = 0, .max = 24000, .step = 0.1, .unit = "m", .standard = "0"},
  {.pointer = "/repeat/startBM", .about = "Where that of the second begins, if it has one",
   .kind = Kind::number, .min = 0, .max = 24000, .step = 0.1, .unit = "m", .standard = "0"},
  {.pointer = "/repeat/ballM", .about = "Yarn in one ball; needed if both socks are of one",
   .kind = Kind::number, .min = 5, .max = 5000, .step = 0.5, .unit = "m"},
  {.pointer = "/repeat/stripes", .about = "Its colours as they leave the ball",
   .kind = Kind::list, .need = kAlways, .min = 1, .max = 24},
  {.pointer = "/repeat/stripes/*", .about = "A stretch of one colour"},
  {.pointer = "/repeat/stripes/*/colour", .about = "Which; the same number again is the same colour",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 24, .step = 1},
  {.pointer = "/repeat/stripes/*/m", .about = "How long it is",
   .kind = Kind::number, .need = kAlways, .min = 0.1, .max = 1000, .step = 0.1, .unit = "m"},

  {.pointer = "/own", .about = "Stripes of plain colours, over and over from the toe up"},
  {.pointer = "/own/stripes", .about = "In turn", .kind = Kind::list, .need = kAlways, .min = 1, .max = 24},
  {.pointer = "/own/stripes/*", .about = "So many rounds of one colour"},
  {.pointer = "/own/stripes/*/colour", .about = "Which",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 24, .step = 1},
  {.pointer = "/own/stripes/*/rounds", .about = "How many",
   .kind = Kind::whole, .need = kAlways, .min = 1, .max = 2000, .step = 1, .unit = "rounds"},

  {.pointer = "/leftovers", .about = "What is left of other yarn"},
  {.pointer = "/leftovers/legHeightMm", .about = "The leg's height as planned, floor to edge",
   .kind = Kind::number, .min = 40, .max = 700, .step = 0.5, .unit = "mm", .partner = "roundsPerMm"},
  {.pointer = "/leftovers/roundsPerMm", .about = "Rounds in a height",
   .kind = Kind::number, .min = 0.01, .max = 10, .step = 0.01, .unit = "1/mm", .partner = "legHeightMm"},
  {.pointer = "/leftovers/lots", .about = "The lots, as they are to be knit if that serves",
   .kind = Kind::list, .need = kAlways, .min = 1, .max = 12},
  {.pointer = "/leftovers/lots/*", .about = "One; `m`, or else `g`: then of `mPer100G`, or as thick as the sock's yarn"},
  {.pointer = "/leftovers/lots/*/m", .about = "Yarn in it",
   .kind = Kind::number, .min = 0.5, .max = 20000, .step = 0.5, .unit = "m"},
  {.pointer = "/leftovers/lots/*/g", .about = "Its mass",
   .kind = Kind::number, .min = 0.5, .max = 2000, .step = 0.5, .unit = "g"},
  {.pointer = "/leftovers/lots/*/mPer100G", .about = "Yarn in 100 g of it",
   .kind = Kind::number, .min = 5, .max = 5000, .step = 1, .unit = "m", .partner = "g"},
};
// clang-format on

}  // namespace

std::vector<Field> stripes_request_fields() {
  const std::span<const Field> sock = making_fields();
  std::vector<Field> fields(std::begin(kHead), std::end(kHead));
  fields.insert(fields.end(), sock.begin(), sock.end());
  fields.insert(fields.end(), std::begin(kAsked), std::end(kAsked));
  return fields;
}

}  // namespace twinround

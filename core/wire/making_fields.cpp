#include "making_fields.h"

#include "length.h"
#include "rounding.h"

namespace twinround {
namespace {

constexpr double kMostLine = 2 * kMostRounds;  // every round of both socks another
constexpr std::string_view kSections = "toe | spiral | widening | cuff";

// clang-format off
constexpr Field kSock[] = {
  {.pointer = "/sock", .about = "One sock in the making, as its plan has it", .need = Need::always},
  {.pointer = "/sock/rounds", .about = "Equal rounds in a row, from the toe up",
   .kind = Kind::list, .need = Need::always, .min = 1, .max = kMostRounds},
  {.pointer = "/sock/rounds/*", .about = "So many equal rounds"},
  {.pointer = "/sock/rounds/*/section", .about = "The part of the sock they are in",
   .kind = Kind::word, .need = Need::always, .words = kSections},
  {.pointer = "/sock/rounds/*/rounds", .about = "How many",
   .kind = Kind::whole, .need = Need::always, .min = 1, .max = 2000, .step = 1, .unit = "rounds"},
  {.pointer = "/sock/rounds/*/stitches", .about = "Stitches after each",
   .kind = Kind::whole, .need = Need::always, .min = 1, .max = 2000, .step = 1, .unit = "stitches"},
  {.pointer = "/sock/rounds/*/line", .about = "Their place in the plan's lines; left out: unlike the rounds before",
   .kind = Kind::whole, .max = kMostLine, .step = 1},
  {.pointer = "/sock/rounds/*/secondLine", .about = "The same of the second sock, where it differs",
   .kind = Kind::whole, .max = kMostLine, .step = 1},
  {.pointer = "/sock/mmPerStitch", .about = "Yarn in one stitch",
   .kind = Kind::number, .need = Need::always, .min = 0.1, .max = 1000, .step = 0.01, .unit = "mm"},
  {.pointer = "/sock/castOnM", .about = "Yarn in the cast-on",
   .kind = Kind::number, .need = Need::always, .min = 0, .max = 100, .step = 0.01, .unit = "m"},
  {.pointer = "/sock/bindOffM", .about = "Yarn in the bind-off",
   .kind = Kind::number, .need = Need::always, .min = 0, .max = 100, .step = 0.01, .unit = "m"},
  {.pointer = "/sock/tailsM", .about = "Yarn in the tails at both ends together",
   .kind = Kind::number, .need = Need::always, .min = 0, .max = 100, .step = 0.01, .unit = "m"},
};
// clang-format on

Length metres_at(const ReadText& read, std::string_view pointer) {
  return Length::from_m(read.number_at(pointer).value_or(0));
}

}  // namespace

std::span<const Field> making_fields() {
  return kSock;
}

SockInMaking making_in(const ReadText& read) {
  SockInMaking sock;
  // In the order of the text: one pass, for there may be hundreds.
  for (const TextValue& value : read.values) {
    const std::string_view pointer = value.field->pointer;
    if (pointer == "/sock/rounds/*") sock.rounds.push_back({.line = value.item});
    if (!pointer.starts_with("/sock/rounds/*/")) continue;
    RoundSpan& span = sock.rounds[static_cast<std::size_t>(value.item)];
    const std::string_view name = field_name(pointer);
    if (name == "section") span.section = static_cast<Section>(word_place(kSections, value.text));
    if (name == "rounds") span.rounds = round_half_up(value.number);
    if (name == "stitches") span.stitches = round_half_up(value.number);
    if (name == "line") span.line = round_half_up(value.number);
    // The second sock's line is not read: it changes where the first one's does.
  }
  sock.loop = Length::from_mm(read.number_at("/sock/mmPerStitch").value_or(0));
  sock.cast_on = metres_at(read, "/sock/castOnM");
  sock.bind_off = metres_at(read, "/sock/bindOffM");
  sock.tails = metres_at(read, "/sock/tailsM");
  return sock;
}

std::optional<Problem> making_problem(const ReadText& read) {
  int rounds = 0;
  for (const RoundSpan& span : making_in(read).rounds) rounds += span.rounds;
  if (rounds <= kMostRounds) return std::nullopt;
  return Problem{"/sock/rounds",
                 "too_many_rounds",
                 {{"rounds", static_cast<double>(rounds)}, {"max", kMostRounds}},
                 {},
                 "A sock has at most 2000 rounds."};
}

}  // namespace twinround

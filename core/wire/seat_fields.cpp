#include "seat_fields.h"

namespace twinround {
namespace {

constexpr Field kInHand[] = {
    {.pointer = "/inHand", .about = "Yarn in hand for the pair"},
    {.pointer = "/inHand/balls",
     .about = "Balls of it",
     .kind = Kind::number,
     .min = 0,
     .max = 100,
     .step = 0.25},
    {.pointer = "/inHand/g",
     .about = "Mass of it; overrules the balls",
     .kind = Kind::number,
     .min = 0,
     .max = 5000,
     .step = 0.5,
     .unit = "g"},
};

}  // namespace

std::vector<Field> seat_fields() {
  const std::span<const Field> plan = request_fields();
  std::vector<Field> fields(plan.begin(), plan.end());
  fields.insert(fields.end(), std::begin(kInHand), std::end(kInHand));
  return fields;
}

InHand in_hand(const ReadText& read) {
  InHand yarn;
  if (const TextValue* balls = read.find("/inHand/balls")) yarn.balls = balls->number;
  if (const TextValue* mass = read.find("/inHand/g")) yarn.mass = Mass::from_g(mass->number);
  return yarn;
}

}  // namespace twinround

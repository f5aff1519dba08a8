#include "random_request.h"

#include <string>

#include "fields.h"
#include "json_writer.h"

namespace twinround {
namespace {

// The standard's own distributions differ from library to library; these do not.
double share(std::mt19937& random) {
  return static_cast<double>(random()) / 4294967296.0;
}
bool chance(std::mt19937& random, double probability) {
  return share(random) < probability;
}

std::string between(std::mt19937& random, double min, double max) {
  const double way = share(random);
  if (way < 0.1) return json_number(min);
  if (way > 0.9) return json_number(max);
  return json_number(min + (max - min) * share(random));
}

std::string whole_between(std::mt19937& random, int min, int max) {
  return std::to_string(min + static_cast<int>(random() % static_cast<unsigned>(max - min + 1)));
}

std::string value_for(std::mt19937& random, const Field& field) {
  switch (field.kind) {
    case Kind::number:
      return between(random, field.min, field.max);
    case Kind::whole:
      return whole_between(random, static_cast<int>(field.min), static_cast<int>(field.max));
    case Kind::yes_no:
      return chance(random, 0.5) ? "true" : "false";
    default:
      break;
  }
  int words = 0;
  while (!word_at(field.words, words).empty()) ++words;
  const int place = static_cast<int>(random() % static_cast<unsigned>(words));
  return "\"" + std::string(word_at(field.words, place)) + "\"";
}

}  // namespace

RequestText wild_request(std::mt19937& random) {
  const bool shoe = chance(random, 0.3);
  const bool weighed = chance(random, 0.5);
  const bool ball = chance(random, 0.5);
  const bool swatch = chance(random, 0.8);
  RequestText request;
  for (const Field& field : request_fields()) {
    const bool leaf = field.kind != Kind::object && field.kind != Kind::list;
    const std::string_view pointer = field.pointer;
    if (!leaf || (pointer.starts_with("/swatch") && !swatch)) continue;
    if (pointer.starts_with("/swatch/mass") && !weighed) continue;
    if (pointer.starts_with("/yarn/ball") && !ball) continue;
    const bool of_shoe = pointer.starts_with("/foot/shoe") || pointer == "/foot/body";
    if (of_shoe && !shoe) continue;
    const bool measured = field.pointer == "/foot/lengthMm" || field.pointer == "/foot/ballGirthMm";
    if (measured && shoe && chance(random, 0.5)) continue;
    const bool category_needed = pointer == "/yarn/category" && !swatch;
    const bool may_miss = field.need == Need::optional && field.partner.empty() && !category_needed;
    if (may_miss && chance(random, 0.5)) continue;
    request = request.with(first_item(pointer), value_for(random, field));
  }
  if (shoe) {
    const bool mondopoint = chance(random, 0.5);
    request = request.with("/foot/shoe/scale", mondopoint ? "\"mondopoint\"" : "\"us-men\"")
                  .with("/foot/shoe/size",
                        mondopoint ? between(random, 80, 400) : between(random, 0, 60));
  }
  return request;
}

RequestText likely_request(std::mt19937& random) {
  RequestText request = full_request()
                            .without("/swatch/stretchedWidthMm")
                            .without("/swatch/massG")
                            .without("/swatch/massStitches")
                            .without("/stitchCount");
  const double stitches = 14 + 20 * share(random);
  request =
      request.with("/swatch/readings/0/stitches", json_number(stitches))
          .with("/swatch/readings/0/rounds", json_number(stitches * (1.2 + 0.4 * share(random))))
          .with("/foot/lengthMm", between(random, 150, 300))
          .with("/foot/ballGirthMm", between(random, 150, 280))
          .with("/legHeightMm", between(random, 130, 400))
          .with("/rib/knit", whole_between(random, 1, 4))
          .with("/rib/purl", whole_between(random, 1, 4))
          .with("/rib/roundsPerShift", whole_between(random, 0, 6))
          .with("/rib/lean", chance(random, 0.5) ? "\"mirrored\"" : "\"right\"")
          .with("/swatch/washed", chance(random, 0.5) ? "true" : "false")
          .with("/swatch/fabric", chance(random, 0.2) ? "\"rib\"" : "\"stockinette\"");
  if (chance(random, 0.5)) request = request.without("/foot/heelAnkleGirthMm");
  if (chance(random, 0.5)) request = request.without("/yarn");
  if (chance(random, 0.3)) request = request.with("/stitchCount", whole_between(random, 20, 90));
  return request;
}

}  // namespace twinround

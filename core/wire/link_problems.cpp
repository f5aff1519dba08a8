#include "link_problems.h"

#include <array>

namespace twinround {

Problem link_problem(LinkFault fault) {
  constexpr std::array<const char*, 5> kSentences = {
      "This is no link of a sheet.",
      "This link was made by a newer page than this one.",
      "This link is longer than any link of a sheet; it was not read.",
      "This link was cut off: its end is missing.",
      "This link was changed on its way: it does not add up.",
  };
  const std::size_t place = static_cast<std::size_t>(fault) - 1;
  return {"/text", std::string(kFaultCodes[place]), {}, {}, kSentences.at(place)};
}

}  // namespace twinround

#include "link_problems.h"

#include "link_seal.h"

namespace twinround {
namespace {

Problem of_link(const char* code, const char* message) {
  return {"/text", code, {}, {}, message};
}

}  // namespace

Problem link_not_ours() {
  return of_link("link_not_ours", "This is no link of a sheet.");
}

Problem link_newer(int version) {
  Problem problem = of_link("link_newer", "This link was made by a newer page than this one.");
  problem.numbers = {{"given", static_cast<double>(version)}, {"max", kLinkVersion}};
  return problem;
}

Problem link_too_long(int max) {
  Problem problem =
      of_link("link_too_long", "This link is longer than any link of a sheet; it was not read.");
  problem.numbers = {{"max", static_cast<double>(max)}};
  return problem;
}

Problem link_cut() {
  return of_link("link_cut", "This link was cut off: its end is missing.");
}

Problem link_damaged() {
  return of_link("link_damaged", "This link was changed on its way: it does not add up.");
}

Problem words_too_long(const std::string& pointer, int max) {
  return {pointer,
          "too_long",
          {{"max", static_cast<double>(max)}},
          {},
          "Give " + std::to_string(max) + " characters at most."};
}

Problem no_such_choice(const std::string& pointer, std::string_view allowed) {
  return {pointer,
          "unknown_word",
          {},
          {{"allowed", std::string(allowed)}},
          "Give one of " + std::string(allowed) + "."};
}

}  // namespace twinround

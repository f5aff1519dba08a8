#include "request_text.h"

#include "request_reader.h"

namespace twinround {
namespace {

using Leaves = std::vector<std::pair<std::string, std::string>>;

bool is_at_or_below(std::string_view pointer, std::string_view around) {
  return pointer == around || (pointer.size() > around.size() && pointer.starts_with(around) &&
                               pointer[around.size()] == '/');
}

// The step after `depth` characters of the pointer.
std::string step_after(std::string_view pointer, std::size_t depth) {
  const auto end = pointer.find('/', depth + 1);
  return std::string(
      pointer.substr(depth + 1, end == std::string_view::npos ? end : end - depth - 1));
}

bool is_index(std::string_view step) {
  return !step.empty() && step[0] >= '0' && step[0] <= '9';
}

std::string text_below(const Leaves& leaves, const std::string& around) {
  for (const auto& [pointer, literal] : leaves) {
    if (pointer == around) return literal;
  }
  std::string members;
  std::vector<std::string> told;
  bool is_list = false;
  for (const auto& [pointer, literal] : leaves) {
    if (!is_at_or_below(pointer, around)) continue;
    const std::string step = step_after(pointer, around.size());
    bool known = false;
    for (const std::string& before : told) known = known || before == step;
    if (known) continue;
    told.push_back(step);
    is_list = is_index(step);
    if (!members.empty()) members += ",";
    if (!is_list) members += "\"" + step + "\":";
    members += text_below(leaves, around + "/" + step);
  }
  return is_list ? "[" + members + "]" : "{" + members + "}";
}

}  // namespace

RequestText RequestText::with(std::string_view pointer, std::string_view literal) const {
  RequestText changed = *this;
  for (auto& leaf : changed.leaves_) {
    if (leaf.first == pointer) {
      leaf.second = literal;
      return changed;
    }
  }
  changed = without(pointer);
  changed.leaves_.emplace_back(pointer, literal);
  return changed;
}

RequestText RequestText::without(std::string_view pointer) const {
  RequestText changed;
  for (const auto& leaf : leaves_) {
    if (!is_at_or_below(leaf.first, pointer)) changed.leaves_.push_back(leaf);
  }
  return changed;
}

std::string RequestText::text() const {
  return text_below(leaves_, "");
}

RequestText full_request() {
  return {{"/version", "1"},
          {"/swatch/fabric", "\"stockinette\""},
          {"/swatch/washed", "true"},
          {"/swatch/needleMm", "4.5"},
          {"/swatch/readings/0/stitches", "20"},
          {"/swatch/readings/0/widthMm", "101.6"},
          {"/swatch/readings/0/rounds", "28"},
          {"/swatch/readings/0/heightMm", "101.6"},
          {"/swatch/stretchedWidthMm", "190"},
          {"/swatch/massG", "5.6"},
          {"/swatch/massStitches", "560"},
          {"/yarn/category", "4"},
          {"/yarn/ballG", "100"},
          {"/yarn/ballM", "200"},
          {"/yarn/substitute/ballG", "50"},
          {"/yarn/substitute/ballM", "105"},
          {"/foot/lengthMm", "246"},
          {"/foot/ballGirthMm", "228"},
          {"/foot/heelAnkleGirthMm", "310"},
          {"/foot/ankleGirthMm", "216"},
          {"/foot/calfGirthMm", "373"},
          {"/legHeightMm", "200"},
          {"/cuffMm", "30"},
          {"/rib/knit", "2"},
          {"/rib/purl", "2"},
          {"/rib/roundsPerShift", "4"},
          {"/rib/lean", "\"left\""},
          {"/girthEase", "-0.10"},
          {"/lengthEase", "-0.04"},
          {"/toe/share", "0.25"},
          {"/toe/tipShare", "0.40"},
          {"/toe/shape", "\"round\""},
          {"/stitchCount", "44"},
          {"/pace/stitchesPerMinute", "15"},
          {"/yarnMargin", "0.10"}};
}

RequestText least_request() {
  return {{"/version", "1"},
          {"/yarn/category", "4"},
          {"/foot/lengthMm", "246"},
          {"/foot/ballGirthMm", "228"},
          {"/legHeightMm", "200"}};
}

RequestText shoe_request() {
  return least_request()
      .without("/foot")
      .with("/foot/shoe/scale", "\"eu\"")
      .with("/foot/shoe/size", "39")
      .with("/foot/body", "\"woman\"");
}

std::vector<Problem> problems_of(std::string_view text) {
  return read_request(text).problems();
}

std::vector<std::string> faults(std::string_view text) {
  std::vector<std::string> found;
  for (const Problem& problem : problems_of(text)) {
    found.push_back(problem.field + " " + problem.code);
  }
  return found;
}

std::vector<std::string> faults(const RequestText& request) {
  return faults(request.text());
}

std::string first_item(std::string_view pointer) {
  std::string filled(pointer);
  const auto star = filled.find('*');
  if (star != std::string::npos) filled[star] = '0';
  return filled;
}

}  // namespace twinround

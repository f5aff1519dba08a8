#include "plan_part.h"

#include <algorithm>
#include <utility>

#include "request_check.h"
#include "request_reader.h"

namespace twinround {
namespace {

// "/swatch" of "/swatch/readings/*/widthMm"; "" of the whole text.
std::string_view member_of(std::string_view pointer) {
  return pointer.substr(0, std::min(pointer.size(), pointer.find('/', 1)));
}

}  // namespace

std::vector<Problem> faults_of_part(const ReadText& part, std::span<const Field> table) {
  std::vector<Problem> faults;
  for (Problem& problem : check_fields(part, table)) {
    const bool is_missing = problem.code == "required" && parent_pointer(problem.field).empty();
    if (!is_missing) faults.push_back(std::move(problem));
  }
  return faults;
}

bool replaces(const ReadText& part, std::string_view member) {
  if (part.find(member)) return true;
  return (member == "/swatch" || member == "/stitchCount") && part.find("/yarn");
}

ReadText laid_over(const ReadText& common, const ReadText& part) {
  if (part.broken) return part;
  ReadText whole;
  whole.unknown = part.unknown;
  for (const ReadText* read : {&common, &part}) {
    for (const TextValue& value : read->values) {
      const bool is_replaced = read == &common && replaces(part, member_of(value.field->pointer));
      if (!is_replaced) whole.values.push_back(value);
    }
  }
  return whole;
}

Result<PlanRequest> request_of_parts(const ReadText& whole, std::span<const Field> table) {
  std::vector<Problem> problems;
  for (Problem& problem : check_fields(whole, table)) {
    // The version is said once, by the text around the parts.
    const bool is_version = problem.code == "required" && problem.field == "/version";
    if (!is_version) problems.push_back(std::move(problem));
  }
  if (!problems.empty()) return problems;
  return plan_request_in(whole);
}

}  // namespace twinround

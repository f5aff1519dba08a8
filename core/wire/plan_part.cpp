#include "plan_part.h"

#include <algorithm>

#include "request_check.h"
#include "request_reader.h"

namespace twinround {
namespace {

// "/swatch" of "/swatch/readings/*/widthMm"; "" of the whole text.
std::string_view member_of(std::string_view pointer) {
  return pointer.substr(0, std::min(pointer.size(), pointer.find('/', 1)));
}

bool is_missing(const Problem& problem, bool at_top) {
  return problem.code == "required" &&
         (at_top ? parent_pointer(problem.field).empty() : problem.field == "/version");
}

void leave_out_missing(std::vector<Problem>& problems, bool at_top) {
  problems.erase(
      std::remove_if(problems.begin(), problems.end(),
                     [at_top](const Problem& problem) { return is_missing(problem, at_top); }),
      problems.end());
}

}  // namespace

std::vector<Problem> faults_of_part(const ReadText& part, std::span<const Field> table) {
  std::vector<Problem> problems = check_fields(part, table);
  leave_out_missing(problems, true);
  return problems;
}

bool replaces(const ReadText& part, std::string_view member) {
  if (part.find(member)) return true;
  return (member == "/swatch" || member == "/stitchCount") && part.find("/yarn");
}

ReadText laid_over(const ReadText& common, const ReadText& part) {
  if (part.broken) return part;
  ReadText whole;
  whole.values.reserve(common.values.size() + part.values.size());
  for (const TextValue& value : common.values) {
    if (!replaces(part, member_of(value.field->pointer))) whole.values.push_back(value);
  }
  whole.values.insert(whole.values.end(), part.values.begin(), part.values.end());
  whole.unknown = part.unknown;
  return whole;
}

Result<PlanRequest> request_of_parts(const ReadText& whole, std::span<const Field> table) {
  std::vector<Problem> problems = check_fields(whole, table);
  // The version is said once, by the text around the parts.
  leave_out_missing(problems, false);
  if (!problems.empty()) return problems;
  return plan_request_in(whole);
}

}  // namespace twinround

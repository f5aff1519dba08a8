#include "course_text.h"

#include <string>
#include <utility>

#include "json_parts.h"
#include "plan_part.h"
#include "request_check.h"

namespace twinround {
namespace {

constexpr std::string_view kClass = "/class";

void tell_below(const std::string& pointer, std::vector<Problem> faults,
                std::vector<Problem>& problems) {
  for (Problem& fault : faults) {
    fault.field = pointer + fault.field;
    problems.push_back(std::move(fault));
  }
}

}  // namespace

CourseText read_course(std::string_view text, const CourseTables& tables, std::size_t most_bytes) {
  CourseText course;
  course.outer = read_json(text, tables.outer, most_bytes);
  course.problems = check_fields(course.outer, tables.outer);
  if (!course.problems.empty()) return course;
  course.members = parts_of(text);
  const TextValue* common = course.outer.find(kClass);
  course.common = read_json(course.members[static_cast<std::size_t>(common->place)], tables.part);
  tell_below(std::string(kClass), faults_of_part(course.common, tables.part), course.problems);
  return course;
}

std::vector<ReadText> CourseText::parts_at(std::string_view pointer,
                                           std::span<const Field> part) const {
  std::vector<ReadText> parts;
  const TextValue* list = outer.find(pointer);
  if (!list) return parts;
  for (const std::string_view text : parts_of(members[static_cast<std::size_t>(list->place)])) {
    parts.push_back(read_json(text, part));
  }
  return parts;
}

void tell_faults_of_parts(std::string_view pointer, const std::vector<ReadText>& parts,
                          std::span<const Field> table, std::vector<Problem>& problems) {
  for (std::size_t at = 0; at < parts.size(); ++at) {
    tell_below(std::string(pointer) + "/" + std::to_string(at), faults_of_part(parts[at], table),
               problems);
  }
}

double number_at(const ReadText& outer, std::string_view pointer) {
  const TextValue* value = outer.find(pointer);
  return value ? value->number : 0;
}

}  // namespace twinround

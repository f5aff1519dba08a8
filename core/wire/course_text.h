// The text of a question about a class: the class in common, and lists of parts laid over it.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "fields.h"
#include "json_reader.h"
#include "result.h"

namespace twinround {

// How a question about a class is written: `outer` describes the text but for its parts, `part` the
// class at /class and the items of lists.
struct CourseTables {
  std::span<const Field> outer;
  std::span<const Field> part;
};

struct CourseText {
  ReadText outer;
  ReadText common;
  std::vector<Problem> problems;  // of both; where there are any, nothing else is to be asked
  std::vector<std::string_view> members;  // texts of the outer one's members, in order

  // The parts in the list at a pointer, read by the table of parts; faults stand in each.
  std::vector<ReadText> parts_at(std::string_view pointer, std::span<const Field> part) const;
};

// `text` is to outlive the result.
CourseText read_course(std::string_view text, const CourseTables& tables,
                       std::size_t most_bytes = kMostBytes);

// Tells what is wrong with each part of a list, at the part's place: for a question where one bad
// part spoils the whole.
void tell_faults_of_parts(std::string_view pointer, const std::vector<ReadText>& parts,
                          std::span<const Field> table, std::vector<Problem>& problems);

// The number at a pointer of the outer text; 0 where there is none.
double number_at(const ReadText& outer, std::string_view pointer);

}  // namespace twinround

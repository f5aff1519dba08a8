#include "supply_question.h"

#include <vector>

#include "course_text.h"
#include "envelope.h"
#include "line_writer.h"
#include "note_writer.h"
#include "pair_line.h"
#include "plan_part.h"

namespace twinround {
namespace {

constexpr Need kAlways = Need::always;
constexpr int kMostRows = 12;
constexpr int kMostColumns = 12;

// clang-format off
constexpr Field kAsked[] = {
  {.pointer = "", .about = "What a class has in common, and its yarns and sizes"},
  {.pointer = "/version", .about = "Version of this request",
   .kind = Kind::whole, .need = kAlways, .min = kVersion, .max = kVersion, .step = 1},
  {.pointer = "/class", .about = "What all have in common", .kind = Kind::named, .need = kAlways, .words = "planPart"},
  {.pointer = "/rows", .about = "Each yarn: what of the class's request it replaces",
   .kind = Kind::list, .need = kAlways, .min = 1, .max = kMostRows},
  {.pointer = "/rows/*", .about = "One yarn", .kind = Kind::named, .words = "planPart"},
  {.pointer = "/columns", .about = "Each size: what of the class's request it replaces",
   .kind = Kind::list, .need = kAlways, .min = 1, .max = kMostColumns},
  {.pointer = "/columns/*", .about = "One size", .kind = Kind::named, .words = "planPart"},
};

constexpr Field kReply[] = {
  {.pointer = "", .about = "One pair for every yarn by every size"},
  {.pointer = "/cells", .about = "Row by row", .kind = Kind::list, .need = kAlways, .min = 1},
  {.pointer = "/cells/*", .about = "One pair"},
  {.pointer = "/cells/*/row", .about = "Its yarn's place, from 0", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/cells/*/column", .about = "Its size's place, from 0", .kind = Kind::whole, .need = kAlways},
  {.pointer = "/cells/*/line", .about = "Its figures; absent where there is no plan", .kind = Kind::named, .words = "pairLine"},
  {.pointer = "/cells/*/problems", .about = "Why there is none", .kind = Kind::list, .min = 1},
  {.pointer = "/cells/*/problems/*", .kind = Kind::named, .words = "problem"},
  {.pointer = "/cells/*/clear", .about = "What the class's request has to lose for this plan: pointers of its members", .kind = Kind::list, .need = kAlways},
  {.pointer = "/cells/*/clear/*", .about = "A member", .kind = Kind::text},
  {.pointer = "/cells/*/change", .about = "What it then has to have: values by pointer", .kind = Kind::named, .need = kAlways, .words = "changes"},
};
// clang-format on

void write_values(JsonWriter& json, const ReadText& part) {
  for (const TextValue& value : part.values) {
    const bool is_leaf = value.kind == JsonKind::number || value.kind == JsonKind::text ||
                         value.kind == JsonKind::yes_no;
    if (!is_leaf || value.field->pointer == "/version") continue;
    json.key(pointer_of(*value.field, value.item));
    if (value.kind == JsonKind::number) json.real(value.number);
    if (value.kind == JsonKind::text) json.text(value.text);
    if (value.kind == JsonKind::yes_no) json.yes_no(value.number == 1);
  }
}

void write_clear(JsonWriter& json, const ReadText& common, const ReadText& part) {
  json.open_list();
  for (const TextValue& value : common.values) {
    const std::string_view pointer = value.field->pointer;
    const bool is_member = !pointer.empty() && parent_pointer(pointer).empty();
    if (is_member && pointer != "/version" && replaces(part, pointer)) json.text(pointer);
  }
  json.close_list();
}

void write_cell(JsonWriter& json, const ReadText& common, const ReadText& part) {
  const Result<PlanRequest> request = request_of_parts(laid_over(common, part), request_fields());
  const Result<PairLine> line =
      request.ok() ? plan_line(request.value()) : Result<PairLine>(request.problems());
  if (line.ok()) {
    json.key("line");
    write_line(json, line.value());
  } else {
    json.key("problems");
    write_problems(json, line.problems());
  }
  json.key("clear");
  write_clear(json, common, part);
  json.key("change").open_object();
  write_values(json, part);
  json.close_object();
}

}  // namespace

std::span<const Field> supply_request_fields() {
  return kAsked;
}

std::span<const Field> supply_reply_fields() {
  return kReply;
}

std::string answer_supply(std::string_view text) {
  CourseText course = read_course(text, {kAsked, request_fields()});
  if (!course.problems.empty()) return refused(course.problems);
  const std::vector<ReadText> rows = course.parts_at("/rows", request_fields());
  const std::vector<ReadText> columns = course.parts_at("/columns", request_fields());
  tell_faults_of_parts("/rows", rows, request_fields(), course.problems);
  tell_faults_of_parts("/columns", columns, request_fields(), course.problems);
  if (!course.problems.empty()) return refused(course.problems);

  return answered("supply", [&](JsonWriter& json) {
    json.open_object();
    json.key("cells").open_list();
    for (std::size_t row = 0; row < rows.size(); ++row) {
      for (std::size_t column = 0; column < columns.size(); ++column) {
        json.open_object();
        json.key("row").whole(static_cast<int>(row));
        json.key("column").whole(static_cast<int>(column));
        write_cell(json, course.common, laid_over(rows[row], columns[column]));
        json.close_object();
      }
    }
    json.close_list();
    json.close_object();
  });
}

}  // namespace twinround

#include "request_reader.h"

#include "fields.h"
#include "request_check.h"
#include "rounding.h"

namespace twinround {
namespace {

FieldValue checked(const TextValue& value) {
  const bool is_word = value.field->kind == Kind::word;
  return {value.number,
          is_word ? word_place(value.field->words, value.text) : round_half_up(value.number)};
}

}  // namespace

PlanRequest plan_request_in(const ReadText& read) {
  PlanRequest request;
  for (const TextValue& value : read.values) {
    if (value.field->set) value.field->set(request, value.item, checked(value));
  }
  return request;
}

Result<PlanRequest> read_request(std::string_view text) {
  const ReadText read = read_json(text, request_fields());
  std::vector<Problem> problems = check_request(read);
  if (!problems.empty()) return problems;
  return plan_request_in(read);
}

}  // namespace twinround

#include "adjust_reader.h"

#include "adjust_fields.h"
#include "json_reader.h"
#include "request_check.h"
#include "request_reader.h"
#include "rounding.h"

namespace twinround {
namespace {

std::optional<double> number_at(const ReadText& read, std::string_view pointer) {
  const TextValue* value = read.find(pointer);
  return value ? std::optional<double>(value->number) : std::nullopt;
}

std::optional<Mass> mass_at(const ReadText& read, std::string_view pointer) {
  const std::optional<double> grams = number_at(read, pointer);
  return grams ? std::optional<Mass>(Mass::from_g(*grams)) : std::nullopt;
}

}  // namespace

Result<AdjustQuestion> read_adjust_request(std::string_view text) {
  const std::vector<Field> table = adjust_request_fields();
  const ReadText read = read_json(text, table);
  std::vector<Problem> problems = check_fields(read, table);
  if (!problems.empty()) return problems;
  AdjustQuestion question;
  AdjustRequest& request = question.request;
  request.plan = plan_request_in(read);
  request.rounds_done = round_half_up(number_at(read, "/needles/roundsDone").value_or(0));
  request.toe.stitches = number_at(read, "/needles/stitches").value_or(0);
  request.toe.width = Length::from_mm(number_at(read, "/needles/widthMm").value_or(0));
  request.toe.rounds = number_at(read, "/needles/rounds");
  if (const auto length = number_at(read, "/needles/lengthMm")) {
    request.toe.height = Length::from_mm(*length);
  }
  question.left_a = mass_at(read, "/needles/gramsLeftA");
  question.left_b = mass_at(read, "/needles/gramsLeftB");
  return question;
}

}  // namespace twinround

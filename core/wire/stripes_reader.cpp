#include "stripes_reader.h"

#include <algorithm>
#include <string>

#include "json_reader.h"
#include "lot_reader.h"
#include "making_fields.h"
#include "problems.h"
#include "request_check.h"
#include "rounding.h"
#include "stripes_fields.h"

namespace twinround {
namespace {

constexpr std::string_view kLots = "/leftovers/lots";

std::optional<Length> metres_at(const ReadText& read, std::string_view pointer) {
  const std::optional<double> m = read.number_at(pointer);
  return m ? std::optional<Length>(Length::from_m(*m)) : std::nullopt;
}

int whole_at(const ReadText& read, std::string_view pointer, int item) {
  return round_half_up(read.number_at(pointer, item).value_or(0));
}

const Field& row_of(std::span<const Field> table, std::string_view pointer) {
  return *std::find_if(table.begin(), table.end(),
                       [&](const Field& field) { return field.pointer == pointer; });
}

// What hangs on several fields: nothing asked for, one ball of unknown length, a lot of nothing.
std::vector<Problem> check_together(const ReadText& read, std::span<const Field> table) {
  std::vector<Problem> problems;
  if (const auto problem = making_problem(read)) problems.push_back(*problem);
  if (!read.find("/repeat") && !read.find("/own") && !read.find("/leftovers")) {
    problems.push_back(required_instead(table, "/repeat", 0, "/own"));
  }
  const TextValue* from = read.find("/repeat/from");
  if (from && word_place(kYarnFromWords, from->text) > 0 && !read.find("/repeat/ballM")) {
    problems.push_back(required(row_of(table, "/repeat/ballM"), 0));
  }
  for (const Problem& problem : lots_of_nothing(read, table, kLots)) problems.push_back(problem);
  return problems;
}

StripesInput repeat_in(const ReadText& read, double tex, double margin) {
  StripesInput input;
  input.tex = tex;
  input.margin = margin;
  if (const TextValue* from = read.find("/repeat/from")) {
    input.from = static_cast<YarnFrom>(word_place(kYarnFromWords, from->text));
  }
  input.start_a = metres_at(read, "/repeat/startAM").value_or(Length{});
  input.start_b = metres_at(read, "/repeat/startBM").value_or(Length{});
  input.ball = metres_at(read, "/repeat/ballM");
  for (int i = 0; i < items_of(read, "/repeat/stripes"); ++i) {
    const double m = read.number_at("/repeat/stripes/*/m", i).value_or(0);
    input.repeat.push_back({whole_at(read, "/repeat/stripes/*/colour", i), Length::from_m(m)});
  }
  return input;
}

LeftoversQuestion leftovers_in(const ReadText& read, double tex, double margin) {
  LeftoversQuestion question;
  question.input.margin = margin;
  for (const YarnLot& lot : lots_in(read, kLots)) {
    question.tex.push_back(tex_of_lot(lot));
    question.input.lots.push_back(length_of_lot(lot, tex));
  }
  if (const auto mm = read.number_at("/leftovers/legHeightMm")) {
    question.leg_height = Length::from_mm(*mm);
    question.rounds = RoundGauge::per_mm(read.number_at("/leftovers/roundsPerMm").value_or(1));
  }
  return question;
}

}  // namespace

Result<StripesQuestion> read_stripes_request(std::string_view text) {
  const std::vector<Field> table = stripes_request_fields();
  const ReadText read = read_json(text, table, kMostMakingBytes);
  std::vector<Problem> problems = check_fields(read, table);
  if (problems.empty()) problems = check_together(read, table);
  if (!problems.empty()) return problems;
  StripesQuestion question;
  question.sock = making_in(read);
  question.tex = read.number_at("/tex").value_or(0);
  const double margin = read.number_at("/margin").value_or(0.10);
  if (read.find("/repeat")) question.repeat = repeat_in(read, question.tex, margin);
  for (int i = 0; i < items_of(read, "/own/stripes"); ++i) {
    question.own.push_back(
        {whole_at(read, "/own/stripes/*/colour", i), whole_at(read, "/own/stripes/*/rounds", i)});
  }
  if (read.find("/leftovers")) question.leftovers = leftovers_in(read, question.tex, margin);
  return question;
}

}  // namespace twinround

#include "stripes_reader.h"

#include <algorithm>
#include <string>

#include "json_reader.h"
#include "making_fields.h"
#include "problems.h"
#include "request_check.h"
#include "rounding.h"
#include "stripes_fields.h"

namespace twinround {
namespace {

constexpr std::string_view kLot = "/leftovers/lots/*";

std::optional<Length> metres_at(const ReadText& read, std::string_view pointer) {
  const std::optional<double> m = read.number_at(pointer);
  return m ? std::optional<Length>(Length::from_m(*m)) : std::nullopt;
}

int items_of(const ReadText& read, std::string_view pointer) {
  const TextValue* list = read.find(pointer);
  return list ? list->items : 0;
}

int whole_at(const ReadText& read, std::string_view pointer, int item) {
  return round_half_up(read.number_at(pointer, item).value_or(0));
}

const Field& row_of(std::span<const Field> table, std::string_view pointer) {
  return *std::find_if(table.begin(), table.end(),
                       [&](const Field& field) { return field.pointer == pointer; });
}

Problem required_instead(const Field& field, int item, const std::string& instead) {
  Problem problem = required(field, item);
  problem.words = {{"instead", instead}};
  return problem;
}

// What hangs on several fields: nothing asked for, one ball of unknown length, a lot of nothing.
std::vector<Problem> check_together(const ReadText& read, std::span<const Field> table) {
  std::vector<Problem> problems;
  if (const auto problem = making_problem(read)) problems.push_back(*problem);
  if (!read.find("/repeat") && !read.find("/own") && !read.find("/leftovers")) {
    problems.push_back(required_instead(row_of(table, "/repeat"), 0, "/own"));
  }
  const TextValue* from = read.find("/repeat/from");
  if (from && word_place(kYarnFromWords, from->text) > 0 && !read.find("/repeat/ballM")) {
    problems.push_back(required(row_of(table, "/repeat/ballM"), 0));
  }
  for (int lot = 0; lot < items_of(read, "/leftovers/lots"); ++lot) {
    if (read.find("/leftovers/lots/*/m", lot) || read.find("/leftovers/lots/*/g", lot)) continue;
    const std::string m = "/leftovers/lots/" + std::to_string(lot) + "/m";
    problems.push_back(required_instead(row_of(table, "/leftovers/lots/*/g"), lot, m));
  }
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
  for (int lot = 0; lot < items_of(read, "/leftovers/lots"); ++lot) {
    const auto m = read.number_at(std::string(kLot) + "/m", lot);
    const auto g = read.number_at(std::string(kLot) + "/g", lot);
    const auto m_per_100g = read.number_at(std::string(kLot) + "/mPer100G", lot);
    std::optional<double> own_tex;
    if (m && g) own_tex = 1000 * *g / *m;
    if (!m && m_per_100g) own_tex = 100000 / *m_per_100g;
    question.tex.push_back(own_tex);
    question.input.lots.push_back(
        Length::from_m(m ? *m : 1000 * g.value_or(0) / own_tex.value_or(tex)));
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

#include "link_reader.h"

#include <algorithm>
#include <cmath>

#include "fields.h"
#include "json_reader.h"
#include "link_fields.h"
#include "link_problems.h"
#include "link_words.h"
#include "plan.h"
#include "problems.h"
#include "request_check.h"
#include "rounding.h"
#include "units.h"

namespace twinround {
namespace {

// A number of a unit as the request of `plan` has it: millimetres, metres, grams or a share.
double in_base(double value, std::string_view unit) {
  if (unit == "cm") return value * 10;
  if (unit == "in") return Length::from_in(value).mm();
  if (unit == "yd") return Length::from_yd(value).m();
  if (unit == "oz") return Mass::from_oz(value).g();
  if (unit == "%") return value / 100;
  return value;
}

// The field a pointer of the draft names, and which reading it is of.
struct Target {
  int row = -1;  // none
  int item = 0;
};

Target target_of(std::string_view pointer) {
  constexpr std::string_view kList = "/swatch/readings/";
  Target target;
  std::string in_table(pointer);
  if (pointer.starts_with(kList)) {
    const std::string_view rest = pointer.substr(kList.size());
    const std::string_view digits = rest.substr(0, rest.find('/'));
    while (target.item < kLinkReadings && std::to_string(target.item) != digits) ++target.item;
    if (target.item == kLinkReadings) return {};
    in_table.replace(kList.size(), digits.size(), "*");
  }
  const auto rows = link_rows_1();
  const auto found = std::find_if(rows.begin(), rows.end(),
                                  [&](const LinkRow& row) { return row.pointer == in_table; });
  if (found != rows.end()) target.row = static_cast<int>(found - rows.begin());
  return target;
}

class Reader {
 public:
  explicit Reader(const ReadText& read) : read_(read) { request_.sheet = empty_sheet(); }

  Result<LinkRequest> read();

 private:
  std::string_view text_at(std::string_view pointer, int item = 0) const {
    const TextValue* value = read_.find(pointer, item);
    return value ? std::string_view(value->text) : std::string_view();
  }
  int choice_at(std::string_view pointer, std::string_view words, int item = 0) const {
    return 1 + word_place(words, text_at(pointer, item));
  }
  int count_at(std::string_view pointer) const {
    const TextValue* value = read_.find(pointer);
    return value ? round_half_up(value->number) : 0;
  }

  void read_field(int item);
  LinkValue read_choice(const LinkRow& row, const std::string& pointer, int item);
  LinkValue read_number(const LinkRow& row, const std::string& pointer, int item);
  LinkValue nearest(const LinkRow& row, int unit, double value, const std::string& pointer);
  std::string read_words(const char* pointer, int most);

  const ReadText& read_;
  LinkRequest request_;
  std::vector<Problem> problems_;
};

LinkValue Reader::read_choice(const LinkRow& row, const std::string& pointer, int item) {
  const std::string_view typed = text_at("/fields/*/typed", item);
  if (typed.empty()) return {LinkValue::What::emptied, 0, 0};
  const int place = word_place(row.words, typed);
  if (place < 0) problems_.push_back(no_such_choice(pointer, row.words));
  return {LinkValue::What::said, 0, place};
}

LinkValue Reader::nearest(const LinkRow& row, int unit, double value, const std::string& pointer) {
  const LinkGrid& grid = row.grids.at(static_cast<std::size_t>(unit));
  const int place = std::clamp(round_half_up(value * grid.parts), grid.first, grid.last);
  const double said = static_cast<double>(place) / grid.parts;
  if (std::abs(said - value) > kTie) request_.changed.push_back(pointer);
  return {LinkValue::What::said, unit, place};
}

LinkValue Reader::read_number(const LinkRow& row, const std::string& pointer, int item) {
  const TextValue* given = read_.find("/fields/*/value", item);
  const std::string_view name = text_at("/fields/*/unit", item);
  const bool is_mm = name == "mm" && row.grids[0].unit == "cm";
  int unit = 0;
  if (!is_mm && !name.empty()) {
    while (unit < unit_count(row) && row.grids.at(static_cast<std::size_t>(unit)).unit != name)
      ++unit;
  }
  if (unit == unit_count(row)) {
    std::string allowed(row.grids[0].unit);
    if (unit == 2) allowed += " | " + std::string(row.grids[1].unit);
    problems_.push_back(no_such_choice(pointer, allowed));
    return {};
  }
  if (!given) return {LinkValue::What::emptied, unit, 0};
  const double value = is_mm ? given->number / 10 : given->number;
  const Field& field = request_field(row.pointer);
  const double base = in_base(value, row.grids.at(static_cast<std::size_t>(unit)).unit);
  if (!at_least(base, field.min) || !at_least(field.max, base)) {
    problems_.push_back(out_of_range(field, target_of(pointer).item, field.min, field.max));
    return {};
  }
  if (field.kind == Kind::whole && round_half_up(value) != value) {
    problems_.push_back(not_whole(field, 0));
    return {};
  }
  return nearest(row, unit, value, pointer);
}

void Reader::read_field(int item) {
  const std::string pointer(text_at("/fields/*/field", item));
  const Target target = target_of(pointer);
  if (target.row < 0) {
    problems_.push_back(unknown_field(pointer));
    return;
  }
  const LinkRow& row = link_rows_1()[static_cast<std::size_t>(target.row)];
  int& code = request_.sheet.codes[place_of(target.row, target.item)];
  if (code != 0) problems_.push_back(repeated_field(request_field(row.pointer), target.item));
  code = code_of(
      row, row.words.empty() ? read_number(row, pointer, item) : read_choice(row, pointer, item));
}

std::string Reader::read_words(const char* pointer, int most) {
  const std::string_view given = text_at(pointer);
  std::string tidy = tidy_words(given);
  if (tidy != given) request_.changed.emplace_back(pointer);
  if (count_characters(tidy) > most) problems_.push_back(words_too_long(pointer, most));
  return tidy;
}

Result<LinkRequest> Reader::read() {
  if (read_.find("/text")) {
    request_.is_opening = true;
    request_.text = text_at("/text");
    return std::move(request_);
  }
  LinkSheet& sheet = request_.sheet;
  for (int item = 0; read_.find("/fields/*", item); ++item) read_field(item);
  sheet.view = choice_at("/view", kLinkViews);
  sheet.system = choice_at("/system", kLinkSystems);
  for (int item = 0; read_.find("/locks/*", item); ++item) {
    sheet.locks |= 1 << word_place(kLinkLocks, text_at("/locks/*", item));
  }
  sheet.rules = kRules;
  sheet.rounds = count_at("/echo/totalRounds");
  sheet.stitches = count_at("/echo/stitchCount");
  sheet.title = read_words("/title", kTitleMost);
  sheet.note = read_words("/note", kNoteMost);
  if (!problems_.empty()) return std::move(problems_);
  return std::move(request_);
}

}  // namespace

static_assert(kRules <= kEchoMostRules, "a link of version 1 cannot say these rules");

Result<LinkRequest> read_link_request(std::string_view json) {
  const ReadText read = read_json(json, link_request_fields());
  std::vector<Problem> problems = check_fields(read, link_request_fields());
  if (!problems.empty()) return problems;
  return Reader(read).read();
}

}  // namespace twinround

#include "link_reader.h"

#include <algorithm>
#include <cmath>

#include "fields.h"
#include "json_reader.h"
#include "link_fields.h"
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
  switch (unit.empty() ? ' ' : unit[0]) {
    case 'c':  // cm
      return value * 10;
    case 'i':  // in
      return Length::from_in(value).mm();
    case 'y':  // yd
      return Length::from_yd(value).m();
    case 'o':  // oz
      return Mass::from_oz(value).g();
    case '%':
      return value / 100;
    default:
      return value;
  }
}

// The field a pointer of the draft names, and which reading it is of.
struct Target {
  int row = -1;  // none
  int item = 0;
};

Target target_of(std::string_view pointer) {
  constexpr std::string_view kList = "/swatch/readings/";
  constexpr std::string_view kItems = "0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11";
  int item = 0;
  const bool is_of_reading = pointer.starts_with(kList);
  if (is_of_reading) {
    pointer.remove_prefix(kList.size());
    const auto slash = std::min(pointer.find('/'), pointer.size());
    item = word_place(kItems, pointer.substr(0, slash));
    pointer.remove_prefix(slash);
  }
  const auto rows = link_rows_1();
  for (std::size_t row = 0; item >= 0 && row < rows.size(); ++row) {
    std::string_view name = rows[row].pointer;
    if (is_of_reading != (rows[row].group == LinkGroup::readings)) continue;
    if (is_of_reading) name.remove_prefix(kList.size() + 1);
    if (name == pointer) return {static_cast<int>(row), item};
  }
  return {};
}

class Reader {
 public:
  Reader(const ReadText& read, LinkRequest& request) : read_(read), request_(request) {}

  void read();

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
  LinkValue read_choice(const LinkRow& row, const Target& target, int item);
  LinkValue read_number(const LinkRow& row, const Target& target, int item);
  void say_choices(const LinkRow& row, const Target& target);
  LinkValue nearest(const LinkRow& row, int unit, double value, int item);
  void say(Problem problem) { request_.problems.push_back(std::move(problem)); }
  std::string pointer_at(int item) const { return std::string(text_at("/fields/*/field", item)); }
  std::string read_words(std::string_view pointer);

  const ReadText& read_;
  LinkRequest& request_;
};

// A choice or a unit that the field does not have.
void Reader::say_choices(const LinkRow& row, const Target& target) {
  Field field = request_field(row.pointer);
  field.words = row.words;
  say(unknown_word(field, target.item));
}

LinkValue Reader::read_choice(const LinkRow& row, const Target& target, int item) {
  const std::string_view typed = text_at("/fields/*/typed", item);
  if (typed.empty()) return {LinkValue::What::emptied, 0, 0};
  const int place = word_place(row.words, typed);
  if (place < 0) say_choices(row, target);
  return {LinkValue::What::said, 0, place};
}

LinkValue Reader::nearest(const LinkRow& row, int unit, double value, int item) {
  const LinkGrid& grid = row.grids[static_cast<std::size_t>(unit)];
  const int place = std::clamp<int>(round_half_up(value * grid.parts), grid.first, grid.last);
  const double said = static_cast<double>(place) / grid.parts;
  if (std::abs(said - value) > kTie) request_.changed.push_back(pointer_at(item));
  return {LinkValue::What::said, unit, place};
}

LinkValue Reader::read_number(const LinkRow& row, const Target& target, int item) {
  const std::string_view name = text_at("/fields/*/unit", item);
  const bool is_mm = name == "mm" && row.words.starts_with("cm");
  const int unit = is_mm || name.empty() ? 0 : word_place(row.words, name);
  if (unit < 0) {
    say_choices(row, target);
    return {};
  }
  const TextValue* given = read_.find("/fields/*/value", item);
  if (!given) return {LinkValue::What::emptied, unit, 0};
  const double value = is_mm ? given->number / 10 : given->number;
  const Field& field = request_field(row.pointer);
  const double base = in_base(value, word_at(row.words, unit));
  if (!at_least(base, field.min) || !at_least(field.max, base)) {
    say(out_of_range(field, target.item, field.min, field.max));
  } else if (field.kind == Kind::whole && round_half_up(value) != value) {
    say(not_whole(field, target.item));
  }
  return nearest(row, unit, value, item);
}

void Reader::read_field(int item) {
  const Target target = target_of(text_at("/fields/*/field", item));
  if (target.row < 0) return say(unknown_field(pointer_at(item)));
  const LinkRow& row = link_rows_1()[static_cast<std::size_t>(target.row)];
  int& code = request_.sheet.codes[place_of(target.row, target.item)];
  if (code != 0) say(repeated_field(request_field(row.pointer), target.item));
  code = code_of(row,
                 is_choice(row) ? read_choice(row, target, item) : read_number(row, target, item));
}

std::string Reader::read_words(std::string_view pointer) {
  const TextValue* given = read_.find(pointer);
  if (!given) return "";
  std::string tidy = tidy_words(given->text);
  if (tidy != given->text) request_.changed.push_back(std::string(pointer));
  if (count_characters(tidy) > given->field->max) say(too_many_items(*given->field, 0));
  return tidy;
}

void Reader::read() {
  if (read_.find("/text")) {
    request_.is_opening = true;
    request_.text = text_at("/text");
    return;
  }
  LinkSheet& sheet = request_.sheet;
  sheet = empty_sheet();
  for (int item = 0; read_.find("/fields/*", item); ++item) read_field(item);
  sheet.view = choice_at("/view", kLinkViews);
  sheet.system = choice_at("/system", kLinkSystems);
  for (int item = 0; read_.find("/locks/*", item); ++item) {
    sheet.locks |= 1 << word_place(kLinkLocks, text_at("/locks/*", item));
  }
  LinkWords& words = sheet.words;
  for (int item = 0; const TextValue* yarn = read_.find("/yarns/*", item); ++item) {
    words.yarns |= 1 << round_half_up(yarn->number);
  }
  sheet.rules = kRules;
  sheet.rounds = count_at("/echo/totalRounds");
  sheet.stitches = count_at("/echo/stitchCount");
  words.title = read_words("/title");
  words.note = read_words("/note");
}

}  // namespace

static_assert(kRules <= kEchoMostRules, "a link of version 1 cannot say these rules");

LinkRequest read_link_request(std::string_view json) {
  const ReadText read = read_json(json, link_request_fields());
  LinkRequest request;
  request.problems = check_fields(read, link_request_fields());
  if (request.problems.empty()) Reader(read, request).read();
  return request;
}

}  // namespace twinround

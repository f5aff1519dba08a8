#include "request_check.h"

#include <optional>

#include "problems.h"
#include "rounding.h"

namespace twinround {
namespace {

class Checker {
 public:
  Checker(const ReadText& read, std::span<const Field> table);

  std::vector<Problem> check();

 private:
  bool has(std::string_view pointer, int item = 0) const { return read_.find(pointer, item); }
  bool is(std::string_view pointer, int item, JsonKind kind) const {
    const TextValue* value = read_.find(pointer, item);
    return value && value->kind == kind;
  }
  void say(std::optional<Problem> problem) {
    if (problem) problems_.push_back(std::move(*problem));
  }

  const TextValue* at(std::size_t row, int item) const {
    const auto place = static_cast<std::size_t>(item);
    return place < by_row_[row].size() ? by_row_[row][place] : nullptr;
  }
  void visit(std::size_t row, int item);
  void visit_missing(const Field& field, int item);
  std::optional<Problem> fault_of(const TextValue& value) const;
  std::optional<Problem> fault_of_number(const TextValue& value) const;

  SizeRange range_of(const Field& field) const;
  bool foot_is_measured() const { return has("/foot/lengthMm") && has("/foot/ballGirthMm"); }
  bool needed_of_foot(const Field& field) const;
  bool needed_of_reading(int item) const;

  const ReadText& read_;
  std::span<const Field> table_;
  // The values of each row by item: a look through all of them for every one of a long list would
  // take a time that grows with its square.
  std::vector<std::vector<const TextValue*>> by_row_;
  std::vector<Problem> problems_;
};

Checker::Checker(const ReadText& read, std::span<const Field> table)
    : read_(read), table_(table), by_row_(table.size()) {
  for (const TextValue& value : read.values) {
    std::vector<const TextValue*>& values =
        by_row_[static_cast<std::size_t>(value.field - table.data())];
    const auto item = static_cast<std::size_t>(value.item);
    if (values.size() <= item) values.resize(item + 1);
    values[item] = &value;
  }
}

// Half a foot: what completes the half that was begun, a measured one or a shoe.
bool Checker::needed_of_foot(const Field& field) const {
  if (foot_is_measured()) return false;
  const bool shoe = has("/foot/shoe");
  const bool shoe_begun =
      shoe || (has("/foot/body") && !has("/foot/lengthMm") && !has("/foot/ballGirthMm"));
  const std::string_view name = field_name(field.pointer);
  if (name == "body" || name == "shoe") return shoe_begun;
  return !shoe_begun;
}

// Rounds and height are needed once in the swatch; asked for at its first reading.
bool Checker::needed_of_reading(int item) const {
  const TextValue* readings = read_.find("/swatch/readings");
  if (!readings || readings->items > readings->field->max) return false;
  for (int other = 0; other < readings->items; ++other) {
    if (other < item && is("/swatch/readings/*", other, JsonKind::object)) return false;
    if (has("/swatch/readings/*/rounds", other)) return false;
    if (has("/swatch/readings/*/heightMm", other)) return false;
  }
  return true;
}

void Checker::visit_missing(const Field& field, int item) {
  if (field.need == Need::optional) return;
  if (!is(parent_pointer(field.pointer), item, JsonKind::object)) return;
  if (field.need == Need::always) return say(required(field, item));
  if (field.pointer == "/swatch") {
    if (!has("/yarn/category")) say(required_or(field, "/yarn/category"));
  } else if (in_list(field)) {
    if (needed_of_reading(item)) say(required(field, item));
  } else if (needed_of_foot(field)) {
    const bool nothing = !has("/foot/lengthMm") && !has("/foot/ballGirthMm") &&
                         !has("/foot/shoe") && !has("/foot/body");
    say(nothing ? required_or(field, "/foot/shoe") : required(field, item));
  }
}

SizeRange Checker::range_of(const Field& field) const {
  const TextValue* scale = read_.find("/foot/shoe/scale");
  if (field.pointer != "/foot/shoe/size" || !scale) return {field.min, field.max};
  if (word_place(scale->field->words, scale->text) < 0) return {field.min, field.max};
  return scale->text == kMondopoint ? kMondopointSizes : kOtherSizes;
}

std::optional<Problem> Checker::fault_of_number(const TextValue& value) const {
  const Field& field = *value.field;
  const SizeRange range = range_of(field);
  if (!(value.number >= range.min && value.number <= range.max)) {
    return out_of_range(field, value.item, range.min, range.max);
  }
  // In range, so far from where rounding saturates.
  if (field.kind == Kind::whole && round_half_up(value.number) != value.number) {
    return not_whole(field, value.item);
  }
  return std::nullopt;
}

std::optional<Problem> Checker::fault_of(const TextValue& value) const {
  const Field& field = *value.field;
  if (value.kind == JsonKind::not_finite) return not_finite(field, value.item);
  if (value.kind == JsonKind::too_large) return number_too_large(field, value.item);
  if (value.kind != json_kind(field.kind)) return wrong_type(field, value.item);
  switch (value.kind) {
    case JsonKind::number:
      return fault_of_number(value);
    case JsonKind::text:
      if (field.kind == Kind::word && word_place(field.words, value.text) < 0) {
        return unknown_word(field, value.item);
      }
      break;
    case JsonKind::list:
      if (value.items > field.max) return too_many_items(field, value.item);
      if (value.items < field.min) return required(field, value.item);
      break;
    default:
      break;
  }
  return std::nullopt;
}

void Checker::visit(std::size_t row, int item) {
  const Field& field = table_[row];
  const TextValue* value = at(row, item);
  if (!value) return visit_missing(field, item);
  if (value->repeated) say(repeated_field(field, item));
  say(fault_of(*value));
  if (!field.partner.empty()) {
    const std::string partner =
        std::string(parent_pointer(field.pointer)) + "/" + std::string(field.partner);
    if (!has(partner, item)) say(needs_partner(field, item));
  }
  if (field.kind != Kind::object) return;
  for (const UnknownField& unknown : read_.unknown) {
    if (unknown.around == &field && unknown.item == item) say(unknown_field(unknown.pointer));
  }
}

std::vector<Problem> Checker::check() {
  std::size_t start = 0;
  while (start < table_.size()) {
    // The rows of a list's item are walked through once for each item.
    std::size_t end = start + 1;
    int items = 1;
    if (in_list(table_[start])) {
      while (end < table_.size() && in_list(table_[end])) ++end;
      items = static_cast<int>(by_row_[start].size());
    }
    for (int item = 0; item < items; ++item) {
      for (std::size_t row = start; row < end; ++row) visit(row, item);
    }
    start = end;
  }
  return std::move(problems_);
}

}  // namespace

std::vector<Problem> check_request(const ReadText& read) {
  return check_fields(read, request_fields());
}

std::vector<Problem> check_fields(const ReadText& read, std::span<const Field> table) {
  if (read.broken) return {*read.broken};
  const TextValue* whole = read.find("");
  if (!whole || whole->kind != JsonKind::object) return {not_an_object()};
  // A newer request may hold what no rule here knows; nothing else is held against it.
  const TextValue* version = read.find("/version");
  if (version && version->kind == JsonKind::number && version->number > kVersion) {
    return {newer_version(version->number)};
  }
  return Checker(read, table).check();
}

}  // namespace twinround

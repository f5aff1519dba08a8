#include "json_reader.h"

#include <utility>

#include "problems.h"
#include "token_scan.h"

#include <nlohmann/json.hpp>

namespace twinround {
namespace {

using nlohmann::json;

// RFC 6901: `~` and `/` inside a step.
std::string escape_step(std::string_view key) {
  std::string step;
  step.reserve(key.size());
  for (const char c : key) {
    if (c == '~') {
      step += "~0";
    } else if (c == '/') {
      step += "~1";
    } else {
      step += c;
    }
  }
  return step;
}

const Field* field_inside(std::span<const Field> table, const Field& around,
                          std::string_view step) {
  for (const Field& field : table) {
    if (field.pointer.size() == around.pointer.size() + 1 + step.size() &&
        field.pointer.starts_with(around.pointer) && field.pointer[around.pointer.size()] == '/' &&
        field.pointer.ends_with(step)) {
      return &field;
    }
  }
  return nullptr;
}

// Receives the parser's events. (A DOM would lose repeated keys and where a text breaks off.)
class Events final : public nlohmann::json_sax<json> {
 public:
  Events(std::span<const Field> table, const std::vector<NullMeaning>& nulls)
      : table_(table), nulls_(nulls) {}

  bool null() override {
    const NullMeaning meaning =
        nulls_seen_ < nulls_.size() ? nulls_[nulls_seen_] : NullMeaning::null;
    ++nulls_seen_;
    switch (meaning) {
      case NullMeaning::not_finite:
        return scalar(JsonKind::not_finite, 0);
      case NullMeaning::too_large:
        return scalar(JsonKind::too_large, 0);
      case NullMeaning::null:
        break;
    }
    return scalar(JsonKind::null, 0);
  }
  bool boolean(bool value) override { return scalar(JsonKind::yes_no, value ? 1 : 0); }
  bool number_integer(number_integer_t value) override {
    return scalar(JsonKind::number, static_cast<double>(value));
  }
  bool number_unsigned(number_unsigned_t value) override {
    return scalar(JsonKind::number, static_cast<double>(value));
  }
  bool number_float(number_float_t value, const string_t& /*digits*/) override {
    return scalar(JsonKind::number, value);
  }
  bool string(string_t& value) override {
    TextValue* here = begin(JsonKind::text);
    if (here && json_kind(here->field->kind) == JsonKind::text) here->text = std::move(value);
    end();
    return true;
  }
  bool binary(binary_t& /*value*/) override { return false; }

  bool start_object(std::size_t /*size*/) override { return open(JsonKind::object); }
  bool key(string_t& name) override {
    Level& around = levels_.back();
    ++around.items;
    const std::string step = escape_step(name);
    pointer_.resize(around.pointer_size);
    pointer_ += '/';
    pointer_ += step;
    next_ = nullptr;
    if (!around.field) return true;
    next_ = field_inside(table_, *around.field, step);
    if (!next_) {
      read_.unknown.push_back({around.field, around.item, pointer_});
    } else if (TextValue* before = noted(around, *next_)) {
      before->repeated = true;
      next_ = nullptr;
    }
    return true;
  }
  bool end_object() override { return close(); }
  bool start_array(std::size_t /*size*/) override { return open(JsonKind::list); }
  bool end_array() override { return close(); }

  bool parse_error(std::size_t /*position*/, const std::string& /*token*/,
                   const nlohmann::detail::exception& /*why*/) override {
    read_.broken = bad_json(pointer_);
    return false;
  }

  ReadText take() { return std::move(read_); }

 private:
  // An object or a list being read; `field` is null where nothing is looked at.
  struct Level {
    const Field* field = nullptr;
    int item = 0;
    bool is_list = false;
    int items = 0;
    std::size_t pointer_size = 0;
    std::size_t own = 0;              // which of the values it is
    std::vector<std::size_t> fields;  // of an object, its own fields among the values
  };

  // Looked for among the object's own fields, never more than the table has: so that neither a long
  // list nor a key that comes again and again beside one takes more than linear time.
  TextValue* noted(const Level& around, const Field& field) {
    for (const std::size_t i : around.fields) {
      if (read_.values[i].field == &field) return &read_.values[i];
    }
    return nullptr;
  }

  // Every value, of whatever kind, begins here: it finds its place in the contract, and is noted if
  // it has one.
  TextValue* begin(JsonKind kind) {
    item_ = 0;
    if (levels_.empty()) {
      next_ = &table_.front();
    } else if (levels_.back().is_list) {
      begin_item(levels_.back());
    } else {
      item_ = levels_.back().item;
    }
    if (!next_) return nullptr;
    if (!levels_.empty() && !levels_.back().is_list) {
      levels_.back().fields.push_back(read_.values.size());
    }
    TextValue value;
    value.field = next_;
    value.item = item_;
    value.place = levels_.empty() ? 0 : levels_.back().items - 1;
    value.kind = kind;
    read_.values.push_back(std::move(value));
    return &read_.values.back();
  }

  void begin_item(Level& list) {
    pointer_.resize(list.pointer_size);
    pointer_ += '/';
    pointer_ += std::to_string(list.items);
    item_ = list.items++;
    next_ = nullptr;
    if (!list.field) return;
    read_.values[list.own].items = list.items;
    if (list.items <= list.field->max) next_ = field_inside(table_, *list.field, "*");
  }

  // Back to the object or list around the value.
  void end() { pointer_.resize(levels_.empty() ? 0 : levels_.back().pointer_size); }

  bool scalar(JsonKind kind, double number) {
    if (TextValue* here = begin(kind)) here->number = number;
    end();
    return true;
  }

  bool open(JsonKind kind) {
    begin(kind);
    if (levels_.size() == kMostDepth) {
      read_.broken = too_deep(pointer_);
      return false;
    }
    // What stands where another kind belongs is told as a whole and not looked into; what another
    // table describes is left to it.
    const bool fits = next_ && json_kind(next_->kind) == kind && next_->kind != Kind::named;
    const std::size_t own = read_.values.empty() ? 0 : read_.values.size() - 1;
    levels_.push_back(
        {fits ? next_ : nullptr, item_, kind == JsonKind::list, 0, pointer_.size(), own, {}});
    return true;
  }

  bool close() {
    levels_.pop_back();
    end();
    return true;
  }

  std::span<const Field> table_;
  const std::vector<NullMeaning>& nulls_;
  std::size_t nulls_seen_ = 0;
  ReadText read_;
  std::vector<Level> levels_;
  std::string pointer_;          // of the value being read
  const Field* next_ = nullptr;  // the field of the value to come, or of the one that just began
  int item_ = 0;
};

}  // namespace

JsonKind json_kind(Kind kind) {
  switch (kind) {
    case Kind::object:
    case Kind::named:
      return JsonKind::object;
    case Kind::list:
      return JsonKind::list;
    case Kind::number:
    case Kind::whole:
      return JsonKind::number;
    case Kind::yes_no:
      return JsonKind::yes_no;
    case Kind::word:
    case Kind::text:
      break;
  }
  return JsonKind::text;
}

const TextValue* ReadText::find(std::string_view field_pointer, int item) const {
  for (const TextValue& value : values) {
    if (value.item == item && value.field->pointer == field_pointer) return &value;
  }
  return nullptr;
}

std::optional<double> ReadText::number_at(std::string_view field_pointer, int item) const {
  const TextValue* value = find(field_pointer, item);
  return value ? std::optional<double>(value->number) : std::nullopt;
}

ReadText read_json(std::string_view text, std::span<const Field> table, std::size_t most_bytes) {
  if (text.size() > most_bytes) {
    ReadText read;
    read.broken = too_large_text(most_bytes);
    return read;
  }
  const TokenScan scan = scan_tokens(text);
  Events events(table, scan.nulls);
  json::sax_parse(scan.text.begin(), scan.text.end(), &events);
  return events.take();
}

}  // namespace twinround

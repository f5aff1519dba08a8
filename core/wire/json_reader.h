// JSON text to a flat list of what stands at the fields of a table.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "fields.h"
#include "result.h"

namespace twinround {

inline constexpr std::size_t kMostBytes = std::size_t{64} * 1024;
inline constexpr std::size_t kMostDepth = 16;

enum class JsonKind { null, not_finite, too_large, yes_no, number, text, list, object };

// How a field of that kind is written.
JsonKind json_kind(Kind kind);

struct TextValue {
  const Field* field = nullptr;
  int item = 0;  // which of the list's items, from 0
  JsonKind kind = JsonKind::null;
  double number = 0;      // of a number; of yes_no 0 or 1
  std::string text;       // of a text where the field is a word or a text
  bool repeated = false;  // the key came again; the later values are not looked at
  int items = 0;          // of a list; those past the field's most are counted but not looked at
  int place = 0;          // which of the values of the object or list around it, from 0
};

// A key that the contract does not have. Nothing below it is looked at.
struct UnknownField {
  const Field* around = nullptr;
  int item = 0;
  std::string pointer;
};

struct ReadText {
  std::vector<TextValue>
      values;  // in the order of the text, each after the object or list around it
  std::vector<UnknownField> unknown;  // in the order of the text
  std::optional<Problem> broken;  // too_large_text, bad_json or too_deep: then nothing else counts

  // Nothing where the text has no value at that field.
  const TextValue* find(std::string_view field_pointer, int item = 0) const;
  std::optional<double> number_at(std::string_view field_pointer, int item = 0) const;
};

// Takes any bytes. Time and memory are linear in them, and nothing recurses. What stands at a field
// of Kind::named is not looked into. Precondition: the table's first row is that of "", and no list
// stands in another one.
ReadText read_json(std::string_view text, std::span<const Field> table,
                   std::size_t most_bytes = kMostBytes);

}  // namespace twinround

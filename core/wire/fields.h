// The contract's fields as plain data: one table for the request of `plan`, one (reply_fields) for
// its reply. The checks, the reader and the schema all walk these rows, so that a range or a
// default is written down once.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "plan_request.h"

namespace twinround {

enum class Kind {
  object,  // closed: a field it does not list is a mistake
  list,    // `min` to `max` items, described by the row at its pointer + "/*"
  number,
  whole,  // a whole number, which may be written 44.0
  yes_no,
  word,   // one of `words`
  text,   // replies only: any text
  named,  // described by the schema's definition called `words`; in a request an object
};

enum class Need {
  optional,
  always,   // wherever the object around it is present
  by_rule,  // where other fields make it so: request_check says when
};

// What a setter is handed.
struct FieldValue {
  double number = 0;
  int whole =
      0;  // of a whole number its value, of a word its place among the words, of yes_no 0 or 1
};

// Writes a checked value into the request. `item`: which of the list's items, from 0.
using FieldSetter = void (*)(PlanRequest& request, int item, const FieldValue& value);

struct Field {
  std::string_view pointer;     // RFC 6901, with `*` for the place in a list; "" is the whole text
  std::string_view about = {};  // one plain phrase
  Kind kind = Kind::object;
  Need need = Need::optional;
  double min = 0;  // of numbers and of the count of a list's items; both ends allowed
  double max = 0;
  double step = 0;  // what a form offers and a link can say; a value off the step is accepted
  std::string_view unit = {};  // "" for a pure number
  std::string_view standard =
      {};  // taken where the field is left out; "" where it then does not exist
  std::string_view words = {};    // allowed, as "a | b"
  std::string_view partner = {};  // the sibling it comes together with
  FieldSetter set = nullptr;
};

// The newest version of the request that this core reads.
inline constexpr int kVersion = 1;

// The sizes of a shoe: the table's range holds all scales, and each scale its own part of it.
struct SizeRange {
  double min = 0;
  double max = 0;
};
inline constexpr std::string_view kMondopoint = "mondopoint";  // the foot's length in mm
inline constexpr SizeRange kMondopointSizes = {80, 400};
inline constexpr SizeRange kOtherSizes = {0, 60};

// The request of `plan`, parents before children, in the order in which problems are told.
std::span<const Field> request_fields();

// Precondition: the pointer is in the table.
const Field& request_field(std::string_view pointer);

// The pointer of the object or list around a pointer; "" of a top field and of "".
std::string_view parent_pointer(std::string_view pointer);

// The last step of a pointer.
std::string_view field_name(std::string_view pointer);

// Whether the row stands inside a list, and the pointer of one item's field.
bool in_list(const Field& field);
std::string pointer_of(const Field& field, int item);

// The place of a word among "a | b | c", from 0; -1 for a word not among them.
int word_place(std::string_view words, std::string_view word);
// The word at that place; "" past the last.
std::string_view word_at(std::string_view words, int place);

}  // namespace twinround

// Sheets for the tests of links, as the page hands them over: each field with its number and unit,
// or its choice.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "link_sheet.h"
#include "request_text.h"

namespace twinround {

struct SheetField {
  std::string pointer;
  std::string typed;  // of a choice
  std::string unit;
  bool has_value = false;
  double value = 0;
};
using SheetFields = std::vector<SheetField>;

SheetField number_field(std::string pointer, double value, std::string unit = "");
SheetField choice_field(std::string pointer, std::string typed);

// The worked example as it is typed: a swatch in inches, a foot in centimetres, every field that
// has a usual value said as well.
SheetFields example_fields();

// The text of a question. `more`: further members, `"view":"buy"`.
std::string link_question(const SheetFields& fields, const std::string& more = "");
std::string open_question(std::string_view link);

// The member `text` of a reply; empty where there is none.
std::string link_in(std::string_view reply);

// The field's number as the request of `plan` has it.
double in_base(const SheetField& field);

// What a link says of one field; of all, in its own order.
SheetField field_of(const LinkRow& row, int item, const LinkValue& value);
SheetFields fields_of(const LinkSheet& sheet);
LinkSheet opened(std::string_view link);  // an empty one where it does not open
// The code of why a link does not open; empty where it does.
std::string code_of_opening(std::string_view link);

// The request of `plan` that such fields make, as the form makes it: what is not asked in the way
// chosen is left out.
RequestText request_of(SheetFields fields);

// Every field said, with twelve readings: the last value of each in its last unit.
LinkSheet fullest_sheet();

}  // namespace twinround

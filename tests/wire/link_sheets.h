// Sheets for the tests of links, as the page hands them over: each field with its number and unit,
// or its choice.
#pragma once

#include <random>
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

// What a link says, in its own order.
SheetFields fields_of(const LinkSheet& sheet);
LinkSheet opened(std::string_view link);

// The request of `plan` that such fields make, as the form makes it: what is not asked in the way
// chosen is left out.
RequestText request_of(SheetFields fields);

// Such a sheet as people type: halves and eighths of inches, millimetres, quarter stitches, half of
// it missing now and then. `is_likely`: near enough a foot and a swatch for a plan.
SheetFields random_fields(std::mt19937& random, bool is_likely);

// Every field said, with twelve readings: the last value of each in its last unit.
LinkSheet fullest_sheet();

}  // namespace twinround

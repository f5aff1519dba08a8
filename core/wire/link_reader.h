// JSON text to a sheet for a link, or to a link to be opened.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "link_sheet.h"
#include "result.h"

namespace twinround {

struct LinkRequest {
  std::vector<Problem> problems;  // everything that is wrong at once; then nothing else counts
  bool is_opening = false;
  std::string text;  // the link to be opened
  LinkSheet sheet;   // or the sheet to be made into one
  std::vector<std::string> changed;
};

// Takes any bytes. Values are taken to the nearest step of their unit; those that this changes by
// more than a billionth are told in `changed`. Ranges are those of the request of `plan`.
LinkRequest read_link_request(std::string_view json);

}  // namespace twinround

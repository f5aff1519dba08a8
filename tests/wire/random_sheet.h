// Sheets by chance.
#pragma once

#include <random>

#include "link_sheets.h"

namespace twinround {

// A sheet as people type it: halves and eighths of inches, quarter stitches, half of
// it missing now and then. `is_likely`: near enough a foot and a swatch for a plan.
SheetFields random_fields(std::mt19937& random, bool is_likely);

}  // namespace twinround

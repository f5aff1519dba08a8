// The question `stripes` as plain data: what is asked, and what comes back.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "fields.h"

namespace twinround {

// A sock in the making, and one or more of: `repeat`, a self-striping yarn; `own`, stripes of plain
// colours; `leftovers`.
std::vector<Field> stripes_request_fields();

inline constexpr std::string_view kYarnFromWords = "two-balls | two-ends | halves";

// What a problem with it may be called besides what one with a plan is.
inline constexpr std::string_view kStripesCodes[] = {"too_many_bands"};

// The object `stripes` of a reply, and the bands in it.
std::span<const Field> stripes_reply_fields();
std::span<const Field> band_fields();

}  // namespace twinround

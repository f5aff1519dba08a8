// The question `link` as plain data, as fields.h has that of `plan`: what is asked, and what comes
// back.
#pragma once

#include <span>
#include <string_view>

#include "fields.h"

namespace twinround {

// The most fields that a sheet can have, readings and all; more are not looked at.
inline constexpr int kMostFields = 100;

// Either `text`, a link to be opened, and then nothing else counts; or a sheet to be made into one.
std::span<const Field> link_request_fields();

// The object `link` of a reply, the same for a link made and for one opened.
std::span<const Field> link_reply_fields();

}  // namespace twinround

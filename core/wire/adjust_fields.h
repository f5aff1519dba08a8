// The question `adjust` as plain data, as fields.h has that of `plan`: what is asked, and what
// comes back.
#pragma once

#include <span>
#include <vector>

#include "fields.h"

namespace twinround {

// The request of `plan` that the sock was begun with, and under `/needles` what is measured on it.
std::vector<Field> adjust_request_fields();

// The object `adjust` of a reply.
std::span<const Field> adjust_reply_fields();

}  // namespace twinround

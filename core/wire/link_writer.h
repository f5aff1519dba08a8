// A link as JSON.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "json_writer.h"
#include "link_sheet.h"

namespace twinround {

// Writes the object `link` of a reply.
void write_link_reply(JsonWriter& json, std::string_view text, const LinkSheet& sheet,
                      const std::vector<std::string>& changed);

}  // namespace twinround

#include "needle_writer.h"

#include <string_view>

namespace twinround {

void write_needle_name(JsonWriter& json, const NeedleName& name) {
  const std::string_view us = name.us;
  const std::string_view uk = name.uk;
  json.key("mm").real(name.diameter.mm());
  if (!us.empty()) json.key("us").text(us);
  if (!uk.empty()) json.key("uk").text(uk);
}

}  // namespace twinround

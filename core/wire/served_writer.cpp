#include "served_writer.h"

#include <optional>

#include "shoe.h"

namespace twinround {

void write_served(JsonWriter& json, const FeetServed& served) {
  const struct {
    const char* name;
    ShoeScale scale;
  } scales[] = {{"eu", ShoeScale::eu},
                {"uk", ShoeScale::uk},
                {"us-women", ShoeScale::us_women},
                {"us-men", ShoeScale::us_men}};
  json.open_object();
  json.key("footFromMm").real(served.from.mm());
  json.key("footToMm").real(served.to.mm());
  json.key("sizes").open_list();
  for (const auto& [name, scale] : scales) {
    const std::optional<ShoeSizes> sizes = shoe_sizes(scale, served.from, served.to);
    if (!sizes) continue;
    json.open_object();
    json.key("scale").text(name);
    json.key("from").real(sizes->from);
    json.key("to").real(sizes->to);
    json.close_object();
  }
  json.close_list();
  json.close_object();
}

}  // namespace twinround

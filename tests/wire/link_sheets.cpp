#include "link_sheets.h"

#include <algorithm>
#include <map>
#include <set>

#include "fields.h"
#include "json_writer.h"

namespace twinround {
namespace {

// Millimetres, grams and metres of a unit, once more than in the core (1959).
double factor_of(const std::string& unit) {
  static const std::map<std::string, double> kFactors = {
      {"cm", 10}, {"in", 25.4}, {"yd", 0.9144}, {"oz", 28.349523125}};
  const auto found = kFactors.find(unit);
  return found == kFactors.end() ? 1 : found->second;
}

}  // namespace

double in_base(const SheetField& field) {
  return field.unit == "%" ? field.value / 100 : field.value * factor_of(field.unit);
}

SheetField field_of(const LinkRow& row, int item, const LinkValue& value) {
  SheetField field;
  field.pointer = pointer_of({.pointer = row.pointer}, item);
  const LinkGrid& grid = row.grids.at(static_cast<std::size_t>(value.unit));
  if (!is_choice(row)) field.unit = word_at(row.words, value.unit);
  if (value.what != LinkValue::What::said) return field;
  if (is_choice(row)) {
    field.typed = word_at(row.words, value.place);
  } else {
    field.has_value = true;
    field.value = static_cast<double>(value.place) / grid.parts;
  }
  return field;
}

SheetField number_field(std::string pointer, double value, std::string unit) {
  return {std::move(pointer), "", std::move(unit), true, value};
}

SheetField choice_field(std::string pointer, std::string typed) {
  return {std::move(pointer), std::move(typed), "", false, 0};
}

SheetFields example_fields() {
  return {choice_field("/swatch", "swatch"),
          choice_field("/foot", "tape"),
          number_field("/swatch/readings/0/stitches", 20),
          number_field("/swatch/readings/0/widthMm", 4, "in"),
          number_field("/swatch/readings/0/rounds", 28),
          number_field("/swatch/readings/0/heightMm", 4, "in"),
          choice_field("/swatch/fabric", "stockinette"),
          choice_field("/swatch/washed", "true"),
          number_field("/swatch/needleMm", 4.5, "mm"),
          number_field("/yarn/category", 4),
          number_field("/yarn/ballG", 100, "g"),
          number_field("/yarn/ballM", 200, "m"),
          number_field("/foot/ballGirthMm", 22.8, "cm"),
          number_field("/foot/lengthMm", 24.6, "cm"),
          number_field("/foot/heelAnkleGirthMm", 31, "cm"),
          number_field("/foot/ankleGirthMm", 21.6, "cm"),
          number_field("/foot/calfGirthMm", 37.3, "cm"),
          choice_field("/foot/shoe/scale", "eu"),
          number_field("/foot/shoe/size", 39),
          choice_field("/foot/body", "woman"),
          number_field("/legHeightMm", 20, "cm"),
          number_field("/cuffMm", 3, "cm"),
          number_field("/rib/knit", 2),
          number_field("/rib/purl", 2),
          number_field("/rib/roundsPerShift", 4),
          choice_field("/rib/lean", "left"),
          number_field("/girthEase", -10, "%"),
          number_field("/lengthEase", -4, "%"),
          choice_field("/toe/shape", "round"),
          number_field("/toe/share", 25, "%"),
          number_field("/toe/tipShare", 40, "%"),
          number_field("/pace/stitchesPerMinute", 15),
          number_field("/yarnMargin", 10, "%")};
}

std::string link_question(const SheetFields& fields, const std::string& more) {
  JsonWriter json;
  json.open_object();
  json.key("version").whole(1);
  json.key("fields").open_list();
  for (const SheetField& field : fields) {
    json.open_object();
    json.key("field").text(field.pointer);
    if (field.has_value) json.key("value").real(field.value);
    if (!field.typed.empty()) json.key("typed").text(field.typed);
    if (!field.unit.empty()) json.key("unit").text(field.unit);
    json.close_object();
  }
  json.close_list();
  return json.written() + (more.empty() ? "" : ",") + more + "}";
}

std::string open_question(std::string_view link) {
  JsonWriter json;
  json.open_object();
  json.key("version").whole(1);
  json.key("text").text(link);
  json.close_object();
  return json.written();
}

std::string link_in(std::string_view reply) {
  constexpr std::string_view kBefore = R"("link":{"text":")";
  const auto at = reply.find(kBefore);
  if (at == std::string_view::npos) return "";
  reply.remove_prefix(at + kBefore.size());
  return std::string(reply.substr(0, reply.find('"')));
}

SheetFields fields_of(const LinkSheet& sheet) {
  SheetFields fields;
  const auto rows = link_rows_1();
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const int items = rows[row].group == LinkGroup::readings ? kLinkReadings : 1;
    for (int item = 0; item < items; ++item) {
      const LinkValue value =
          value_of(rows[row], sheet.codes[place_of(static_cast<int>(row), item)]);
      if (value.what != LinkValue::What::not_said)
        fields.push_back(field_of(rows[row], item, value));
    }
  }
  return fields;
}

LinkSheet opened(std::string_view link) {
  LinkSheet sheet;
  return read_link(link, sheet) == LinkFault::none ? sheet : empty_sheet();
}

std::string code_of_opening(std::string_view link) {
  LinkSheet sheet;
  const LinkFault fault = read_link(link, sheet);
  return fault == LinkFault::none ? "" : link_problem(fault).code;
}

RequestText request_of(SheetFields fields) {
  std::map<std::string, std::string> ways = {{"/swatch", "swatch"}, {"/foot", "tape"}};
  std::set<int> readings;
  const auto reading_of = [](const std::string& pointer) {
    return pointer.starts_with("/swatch/readings/") ? std::stoi(pointer.substr(17)) : -1;
  };
  const auto is_empty = [](const SheetField& field) {
    return !field.has_value && field.typed.empty();
  };
  // A list of the request text stands in the order of its leaves.
  std::stable_sort(fields.begin(), fields.end(), [&](const SheetField& a, const SheetField& b) {
    return reading_of(a.pointer) < reading_of(b.pointer);
  });
  for (const SheetField& field : fields) {
    if (ways.count(field.pointer) && !is_empty(field)) ways[field.pointer] = field.typed;
    if (reading_of(field.pointer) >= 0 && !is_empty(field))
      readings.insert(reading_of(field.pointer));
  }
  RequestText request = {{"/version", "1"}};
  for (const SheetField& field : fields) {
    const std::string& pointer = field.pointer;
    if (ways.count(pointer) || is_empty(field)) continue;
    const bool of_shoe = pointer.starts_with("/foot/shoe") || pointer == "/foot/body";
    const bool of_tape = pointer == "/foot/lengthMm" || pointer == "/foot/ballGirthMm";
    if (pointer.starts_with("/swatch/") && ways["/swatch"] != "swatch") continue;
    if (of_shoe && ways["/foot"] != "shoe") continue;
    if (of_tape && ways["/foot"] != "tape") continue;
    std::string place = pointer;
    if (const int reading = reading_of(pointer); reading >= 0) {
      const auto nth = std::distance(readings.begin(), readings.find(reading));
      place = "/swatch/readings/" + std::to_string(nth) + pointer.substr(pointer.rfind('/'));
    }
    const bool is_yes_no = field.typed == "true" || field.typed == "false";
    request = request.with(place, field.has_value ? json_number(in_base(field))
                                  : is_yes_no     ? field.typed
                                                  : "\"" + field.typed + "\"");
  }
  return request;
}

LinkSheet fullest_sheet() {
  LinkSheet sheet = empty_sheet();
  const auto rows = link_rows_1();
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const int items = rows[row].group == LinkGroup::readings ? kLinkReadings : 1;
    for (int item = 0; item < items; ++item) {
      sheet.codes[place_of(static_cast<int>(row), item)] = value_count(rows[row]) - 1;
    }
  }
  sheet.view = 4;
  sheet.system = 2;
  sheet.locks = 7;
  sheet.rules = kEchoMostRules;
  sheet.rounds = kEchoMostRounds;
  sheet.stitches = kEchoMostStitches;
  return sheet;
}

}  // namespace twinround

#include "link_writer.h"

#include <numeric>

#include "fields.h"

namespace twinround {
namespace {

// A number of parts as one types it: in sixteenths of an inch as a tape has them, in thirds what no
// decimal can say, all else as a decimal.
std::string typed_text(int parts, int place) {
  constexpr int kInchParts = 80;
  const int rest = place % parts;
  const int common = std::gcd(rest, parts);
  const int below = parts / common;
  const bool is_fraction = below % 3 == 0 || (parts == kInchParts && below > 1 && 16 % below == 0);
  if (!is_fraction) return json_number(static_cast<double>(place) / parts);
  const std::string whole = place < parts ? "" : std::to_string(place / parts) + " ";
  return whole + std::to_string(rest / common) + "/" + std::to_string(below);
}

void write_field(JsonWriter& json, const LinkRow& row, int item, const LinkValue& value) {
  const bool is_said = value.what == LinkValue::What::said;
  const int parts = row.grids[static_cast<std::size_t>(value.unit)].parts;
  json.open_object();
  json.key("field").text(pointer_of(request_field(row.pointer), item));
  json.key("typed");
  if (!is_said) {
    json.text("");
  } else if (is_choice(row)) {
    json.text(word_at(row.words, value.place));
  } else {
    json.text(typed_text(parts, value.place));
  }
  json.key("unit").text(is_choice(row) ? "" : word_at(row.words, value.unit));
  if (is_said && !is_choice(row)) json.key("value").real(static_cast<double>(value.place) / parts);
  json.close_object();
}

void write_fields(JsonWriter& json, const LinkSheet& sheet) {
  const auto rows = link_rows_1();
  json.open_list();
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const int items = rows[row].group == LinkGroup::readings ? kLinkReadings : 1;
    for (int item = 0; item < items; ++item) {
      const LinkValue value =
          value_of(rows[row], sheet.codes[place_of(static_cast<int>(row), item)]);
      if (value.what != LinkValue::What::not_said) write_field(json, rows[row], item, value);
    }
  }
  json.close_list();
}

void write_choice(JsonWriter& json, const char* name, std::string_view words, int choice) {
  if (choice > 0) json.key(name).text(word_at(words, choice - 1));
}

void write_locks(JsonWriter& json, int locks) {
  json.open_list();
  for (int place = 0; !word_at(kLinkLocks, place).empty(); ++place) {
    if ((locks >> place) % 2 == 1) json.text(word_at(kLinkLocks, place));
  }
  json.close_list();
}

void write_yarns(JsonWriter& json, int yarns) {
  if (yarns == 0) return;
  json.key("yarns").open_list();
  for (int category = 0; category < kYarnCategories; ++category) {
    if ((yarns >> category) % 2 == 1) json.whole(category);
  }
  json.close_list();
}

void write_echo(JsonWriter& json, const LinkSheet& sheet) {
  json.open_object();
  json.key("rules").whole(sheet.rules);
  if (sheet.rounds > 0) {
    json.key("stitchCount").whole(sheet.stitches);
    json.key("totalRounds").whole(sheet.rounds);
  }
  json.close_object();
}

}  // namespace

void write_link_reply(JsonWriter& json, std::string_view text, const LinkSheet& sheet,
                      const std::vector<std::string>& changed) {
  json.open_object();
  json.key("text").text(text);
  json.key("fields");
  write_fields(json, sheet);
  write_choice(json, "view", kLinkViews, sheet.view);
  write_choice(json, "system", kLinkSystems, sheet.system);
  json.key("locks");
  write_locks(json, sheet.locks);
  const auto& [title, note, yarns] = sheet.words;
  write_yarns(json, yarns);
  if (!title.empty()) json.key("title").text(title);
  if (!note.empty()) json.key("note").text(note);
  json.key("echo");
  write_echo(json, sheet);
  json.key("changed").open_list();
  for (const std::string& pointer : changed) json.text(pointer);
  json.close_list();
  json.close_object();
}

}  // namespace twinround

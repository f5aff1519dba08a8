// Which fields a link says, in which order and how finely. Each version's rows are frozen with its
// first link: they are written out as plain whole numbers and follow nothing that may change.
#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <string_view>

namespace twinround {

// The values that can be said in one unit: first/parts, (first + 1)/parts ... last/parts.
struct LinkGrid {
  std::int16_t parts = 0;
  std::int16_t first = 0;
  std::int16_t last = 0;
};

// Rows of a group stand together; a group in which nothing is said takes one bit.
enum class LinkGroup { ways, readings, foot, yarn, rib, fit, count, shoe, substitute, stretch };

struct LinkRow {
  std::string_view pointer;  // as in the draft; `*` for the place of a reading
  LinkGroup group = LinkGroup::ways;
  std::string_view words = {};         // of a choice, "a | b"; of a number its units
  std::array<LinkGrid, 2> grids = {};  // of a number: of each unit
};

// What a link says of a field. Not said is not the same as emptied: where nothing is said, whoever
// opens the link keeps what he has.
struct LinkValue {
  enum class What { not_said, emptied, said };
  What what = What::not_said;
  int unit = 0;   // which of the grids; 0 of a choice
  int place = 0;  // said: parts of the unit, or the place among the words
};

inline constexpr int kLinkReadings = 12;

// The rows of version 1, those of one reading last.
std::span<const LinkRow> link_rows_1();

bool is_choice(const LinkRow& row);
// How many units a field has, one where it has no name and one of a choice; how many things can be
// said of it.
int unit_count(const LinkRow& row);
int value_count(const LinkRow& row);

// A value as a whole number from 0 to value_count - 1, 0 for what is not said; and back.
int code_of(const LinkRow& row, const LinkValue& value);
LinkValue value_of(const LinkRow& row, int code);

}  // namespace twinround

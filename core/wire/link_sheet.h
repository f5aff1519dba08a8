// A sheet as a link says it, and the number it becomes.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "link_number.h"
#include "link_rows.h"
#include "link_seal.h"
#include "link_words.h"

namespace twinround {

// Choices of a link besides the sheet's fields; 0 is none of them, 1 the first.
inline constexpr std::string_view kLinkViews = "buy | count | knit | class";
inline constexpr std::string_view kLinkSystems = "metric | inch";
inline constexpr std::string_view kLinkLocks = "rib | toe | yarn";

inline constexpr int kEchoLeastStitches = 8;
inline constexpr int kEchoMostStitches = 400;
inline constexpr int kEchoMostRounds = 2000;
// Rules are numbered from 1; a hundredth asks for a new version of the link.
inline constexpr int kEchoMostRules = 99;

struct LinkSheet {
  std::vector<int> codes;  // what is said of each field, by place_of (code_of, value_of)
  int view = 0;
  int system = 0;
  int locks = 0;  // 1 for the first of them, 2 for the second, 4 for the third, added up
  // The plan this sheet had when the link was made: the rules it was made by, and where there was
  // one (rounds > 0) its stitches and the rounds of one sock. A sheet with a count of its own has
  // that for its stitches.
  int rules = 0;
  int rounds = 0;
  int stitches = 0;
  LinkWords words;  // of a class
};

// A sheet of which nothing is said yet.
LinkSheet empty_sheet();

// Where a field's code stands: `row` of link_rows_1, `item` of the readings (0 of other fields).
std::size_t place_of(int row, int item);

// In the oldest version that can say it, which every page opens. Precondition: every code within
// value_count, the rest within its range, the words tidy.
std::string write_link(LinkSheet sheet);

// Takes any bytes. Whatever version it has, old ones are read as they were written.
LinkFault read_link(std::string_view text, LinkSheet& sheet);

}  // namespace twinround

#include "link_sheet.h"

#include <algorithm>

namespace twinround {
namespace {

constexpr int kReadingRows = 4;  // the last rows

int fixed_rows() {
  return static_cast<int>(link_rows_1().size()) - kReadingRows;
}

const LinkRow& row_at(int row) {
  return link_rows_1()[static_cast<std::size_t>(row)];
}

int count_row() {
  int row = 0;
  while (row_at(row).group != LinkGroup::count) ++row;
  return row;
}

// Walks through a sheet in the order of version 1, writing it or filling it in. Version 2 has more
// words behind it, and the same sheet.
class Version1 {
 public:
  Version1(LinkNumber& number, LinkSheet& sheet) : number_(number), sheet_(sheet) {}

  bool walk(bool has_words);

 private:
  void pass(int& value, int radix) { value = number_.pass(value, radix); }
  void pass_code(int row, int item) {
    pass(sheet_.codes[place_of(row, item)], value_count(row_at(row)));
  }
  void pass_readings();
  void pass_fields();
  void pass_echo();

  LinkNumber& number_;
  LinkSheet& sheet_;
};

// As many as reach to the last one of which anything is said.
void Version1::pass_readings() {
  int count = 0;
  for (int item = 0; item < kLinkReadings; ++item) {
    for (int row = 0; row < kReadingRows; ++row) {
      if (sheet_.codes[place_of(fixed_rows() + row, item)] != 0) count = item + 1;
    }
  }
  pass(count, kLinkReadings + 1);
  for (int item = 0; item < count; ++item) {
    for (int row = 0; row < kReadingRows; ++row) pass_code(fixed_rows() + row, item);
  }
}

void Version1::pass_fields() {
  int end = 0;
  for (int row = 0; row < fixed_rows(); row = end) {
    const LinkGroup group = row_at(row).group;
    int is_any_said = 0;
    for (end = row; end < fixed_rows() && row_at(end).group == group; ++end) {
      if (sheet_.codes[place_of(end, 0)] != 0) is_any_said = 1;
    }
    if (group == LinkGroup::count) continue;  // goes with the echo
    pass(is_any_said, 2);
    for (int said = row; is_any_said == 1 && said < end; ++said) pass_code(said, 0);
  }
}

// The knitter's own count and the count of the plan are never two: one number says both.
void Version1::pass_echo() {
  constexpr int kOwn = 2;  // 0 not said, 1 emptied
  pass(sheet_.rules, kEchoMostRules + 1);
  pass(sheet_.rounds, kEchoMostRounds + 1);
  int& code = sheet_.codes[place_of(count_row(), 0)];
  int count = std::min(code, kOwn);
  pass(count, kOwn + 1);
  int above = count == kOwn ? code - kOwn : std::max(0, sheet_.stitches - kEchoLeastStitches);
  if (count == kOwn || sheet_.rounds > 0) pass(above, kEchoMostStitches - kEchoLeastStitches + 1);
  code = count == kOwn ? kOwn + above : count;
  if (sheet_.rounds > 0) sheet_.stitches = kEchoLeastStitches + above;
}

bool Version1::walk(bool has_words) {
  int words = has_words ? 1 : 0;
  pass(words, 2);
  pass(sheet_.view, 5);
  pass(sheet_.system, 3);
  pass(sheet_.locks, 8);
  pass_readings();
  pass_fields();
  pass_echo();
  return words == 1;
}

}  // namespace

LinkSheet empty_sheet() {
  LinkSheet sheet;
  sheet.codes.resize(place_of(fixed_rows() + kReadingRows - 1, kLinkReadings - 1) + 1);
  return sheet;
}

std::size_t place_of(int row, int item) {
  const int place = row + item * kReadingRows;
  return static_cast<std::size_t>(place);
}

std::string write_link(LinkSheet sheet) {
  const LinkWords& said = sheet.words;
  const int version = said.yarns > 0 ? 2 : 1;
  const bool has_words = version == 2 || !said.title.empty() || !said.note.empty();
  LinkNumber number;
  Version1(number, sheet).walk(has_words);
  const std::string body = number.letters();
  const std::string words = has_words ? write_words(version, said) : "";
  return seal_link({version, body, words});
}

LinkFault read_link(std::string_view text, LinkSheet& sheet) {
  LinkParts parts;
  const LinkFault fault = unseal_link(text, parts);
  if (fault != LinkFault::none) return fault;

  LinkNumber number(parts.body);
  sheet = empty_sheet();
  const bool has_words = Version1(number, sheet).walk(false);
  // What adds up and yet was never written here.
  if (!number.is_spent() || sheet.rules == 0) return LinkFault::damaged;
  if (!has_words) {
    const bool is_whole = parts.words.empty() && parts.version == 1;
    return is_whole ? LinkFault::none : LinkFault::damaged;
  }
  if (parts.words.empty()) return LinkFault::cut;
  const bool is_read = read_words(parts.version, parts.words, sheet.words);
  return is_read ? LinkFault::none : LinkFault::damaged;
}

}  // namespace twinround

// What a teacher says in a link besides the sheet: a title and a note, kept plain, for they are
// text that stands where it is put; and the yarns that her class may use.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// In characters (code points).
inline constexpr int kTitleMost = 60;
inline constexpr int kNoteMost = 280;
// Categories of yarn, 0 to 7, each allowed or not: 256 choices.
inline constexpr int kYarnCategories = 8;
inline constexpr int kYarnChoices = 1 << kYarnCategories;

struct LinkWords {
  std::string title;  // UTF-8
  std::string note;
  int yarns = 0;  // 1 for category 0, 2 for 1, 4 for 2 and so on, added up; 0: any yarn
};

// Without what is not to be seen or turns the text around it: control characters and the marks that
// override a text's direction. Line ends and tabs become spaces; none stand at the ends or beside
// each other. Bytes that are no UTF-8 are left out.
std::string tidy_words(std::string_view text);

// Characters of a text that is UTF-8.
int count_characters(std::string_view text);

// Precondition: both texts tidy and within their most characters; something is said, and yarns in
// version 2 only, which always says some: so every sheet has one link.
std::string write_words(int version, const LinkWords& words);

// False where the letters are not what write_words makes. Takes any letters.
bool read_words(int version, std::string_view letters, LinkWords& words);

}  // namespace twinround

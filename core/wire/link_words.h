// The title and the note that a teacher gives a link, kept plain: text that stands where it is put.
#pragma once

#include <string>
#include <string_view>

namespace twinround {

// In characters (code points).
inline constexpr int kTitleMost = 60;
inline constexpr int kNoteMost = 280;

// Without what is not to be seen or turns the text around it: control characters and the marks that
// override a text's direction. Line ends and tabs become spaces; none stand at the ends or beside
// each other. Bytes that are no UTF-8 are left out.
std::string tidy_words(std::string_view text);

// Characters of a text that is UTF-8.
int count_characters(std::string_view text);

// Precondition: both tidy and within their most characters, one of them not empty.
std::string write_words(std::string_view title, std::string_view note);

// False where the letters are not what write_words makes. Takes any letters.
bool read_words(std::string_view letters, std::string& title, std::string& note);

}  // namespace twinround

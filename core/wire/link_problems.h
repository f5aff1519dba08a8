// What can be wrong with a link, or with a sheet that is to become one.
#pragma once

#include <string>
#include <string_view>

#include "result.h"

namespace twinround {

// Every code that the question `link` may answer with; the schema lists them.
inline constexpr std::string_view kLinkCodes[] = {
    // The link as a whole.
    "link_not_ours",
    "link_newer",
    "link_too_long",
    "link_cut",
    "link_damaged",
    // The words of a class.
    "too_long",
    // As of any request.
    "too_large_text",
    "bad_json",
    "too_deep",
    "not_an_object",
    "newer_version",
    "required",
    "unknown_field",
    "repeated_field",
    "wrong_type",
    "out_of_range",
    "not_finite",
    "number_too_large",
    "not_whole",
    "unknown_word",
    "too_many_items",
};

Problem link_not_ours();
Problem link_newer(int version);
Problem link_too_long(int max);
Problem link_cut();
Problem link_damaged();
// Words with more characters than there is room for; `pointer`: /title or /note.
Problem words_too_long(const std::string& pointer, int max);
// A unit or a choice that the field does not have.
Problem no_such_choice(const std::string& pointer, std::string_view allowed);

}  // namespace twinround

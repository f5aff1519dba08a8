// A link's text: what stands around the number, so that a cut or changed link is known for one.
//
//   1        the version, 1-9 and A-Z: first, so that a newer link is known before anything else is
//            read; small letters begin no link, so that a place in the page (#how) is none
//   mQ3x0P   the number of letters that follow, and the check, in six letters
//   ...      the sheet, one number (link_sheet)
//   _2f...   the words of a class, if there are any, and its yarns: how many letters, and another
//            number
//
// The check is a polynomial over the prime 2^28 - 57: each character in turn, check x g + its
// value. One changed character changes it by (a difference under the prime) x g^n, which is never
// nought; two neighbours that change places by (their difference) x (g - 1) x g^n, likewise. A
// change to the six letters themselves asks for another length or another check, and there is only
// one of each that fits. A cut is seen by the lengths before the check is even looked at.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "link_problems.h"

namespace twinround {

// The newest version of a link. Version 2 says which yarns a class may use, among its words; what
// says none is written as version 1 still, which older pages open.
inline constexpr int kLinkVersion = 2;

inline constexpr int kLinkMost = 150;  // letters of a link, its words aside: a promise
inline constexpr int kHeadLetters = 7;
inline constexpr int kBodyMost = kLinkMost - kHeadLetters;
inline constexpr int kWordsMost = 1840;  // letters of the words: 340 characters of four bytes each

struct LinkParts {
  int version = 1;
  std::string_view body;
  std::string_view words;
};

// What the six letters hold of the check. Any characters; those that are no letters count as one
// more letter, so that they too are told apart from every letter.
std::uint32_t link_check(int version, std::string_view text);

// Precondition: letters alone, kBodyMost and kWordsMost of them at most.
std::string seal_link(const LinkParts& parts);

// Takes any bytes, of any length; the parts are pieces of them.
LinkFault unseal_link(std::string_view text, LinkParts& parts);

}  // namespace twinround

// A sock in the making at the wire: the object `sock` of the questions asked about it, and its
// reader.
#pragma once

#include <optional>
#include <span>

#include "fields.h"
#include "json_reader.h"
#include "making.h"

namespace twinround {

// The most of a text with a sock in it: 2000 rounds, each unlike the one before, at 80 letters a
// round, and as much again for spaces.
inline constexpr std::size_t kMostMakingBytes = std::size_t{320} * 1024;

// `/sock` and all below it. The page copies it out of a plan.
std::span<const Field> making_fields();

// What only the whole of it shows: more rounds than any sock has. Precondition: its fields were
// checked.
std::optional<Problem> making_problem(const ReadText& read);

// Precondition: nothing was wrong with it.
SockInMaking making_in(const ReadText& read);

}  // namespace twinround

// The problems of the wire itself, each with its numbers, its words and a plain sentence in SI
// units.
#pragma once

#include <cstddef>
#include <string>

#include "fields.h"
#include "result.h"

namespace twinround {

// The text as a whole; `pointer` is where reading ended.
Problem unknown_question();
Problem too_large_text(std::size_t most_bytes);
Problem bad_json(const std::string& pointer);
Problem too_deep(const std::string& pointer);
Problem not_an_object();
Problem newer_version(double version);

// One field, of item `item` where it stands in a list.
Problem required(const Field& field, int item);
// ... where another field would do instead.
Problem required_or(const Field& field, std::string_view instead);
Problem unknown_field(const std::string& pointer);
Problem repeated_field(const Field& field, int item);
Problem wrong_type(const Field& field, int item);
Problem out_of_range(const Field& field, int item, double min, double max);
Problem not_finite(const Field& field, int item);
Problem number_too_large(const Field& field, int item);
Problem not_whole(const Field& field, int item);
Problem unknown_word(const Field& field, int item);
Problem too_many_items(const Field& field, int item);
Problem needs_partner(const Field& field, int item);

// A plan came out with a figure that no double holds: refused as a whole rather than told in part.
Problem figure_too_large();

}  // namespace twinround

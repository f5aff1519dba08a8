// The question `odd`: what is odd about one pair, the most harmful first.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "fields.h"
#include "json_writer.h"
#include "odd.h"

namespace twinround {

// A whole reply. The request is that of a seat (seat_fields) and whole.
std::string answer_odd(std::string_view text);

// A list of the schema's `oddity`: harm, and what a caution has.
void write_oddities(JsonWriter& json, const std::vector<Oddity>& odd);

// The reply as plain data.
std::span<const Field> odd_reply_fields();

inline constexpr std::string_view kHarmWords[] = {"body", "supply", "sock", "doubt"};

// The codes an oddity may carry besides those of cautions.
inline constexpr std::string_view kOddCodes[] = {
    "tight_on_leg", "yarn_short",  "margin_short",     "hand_needs_ball",
    "gauge_dense",  "gauge_loose", "readings_scatter",
};

}  // namespace twinround

// What is told beside the figures: problems, cautions, and how each figure came about.
#pragma once

#include <vector>

#include "json_writer.h"
#include "plan.h"

namespace twinround {

// The members of a problem's or a caution's object: field, code, then its numbers and words side by
// side, then the message.
void write_note_members(JsonWriter& json, const Problem& problem);
// A list of them.
void write_problems(JsonWriter& json, const std::vector<Problem>& problems);
void write_working(JsonWriter& json, const std::vector<Working>& working);

}  // namespace twinround

// The sock round by round as JSON: its toe, its lines, its rounds.
#pragma once

#include "json_writer.h"
#include "plan.h"

namespace twinround {

const char* word_of(ToeSides sides);

const char* word_of(Section section);
void write_toe(JsonWriter& json, const Toe& toe);
void write_lines(JsonWriter& json, const std::vector<RoundLine>& lines);
void write_rounds(JsonWriter& json, const std::vector<RoundSpan>& rounds);

}  // namespace twinround

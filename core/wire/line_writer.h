// The line of a pair in a table, as JSON.
#pragma once

#include <span>

#include "fields.h"
#include "json_writer.h"
#include "pair_line.h"

namespace twinround {

void write_line(JsonWriter& json, const PairLine& line);

// What it writes, as plain data: the schema's definition `pairLine`.
std::span<const Field> line_fields();

}  // namespace twinround

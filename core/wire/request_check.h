// The rules of the contract, held against what was read.
#pragma once

#include <span>
#include <vector>

#include "json_reader.h"
#include "result.h"

namespace twinround {

// Every problem at once, in the order of the table of fields; empty where a plan may be made.
std::vector<Problem> check_request(const ReadText& read);

// The same of another table of fields that was read.
std::vector<Problem> check_fields(const ReadText& read, std::span<const Field> table);

}  // namespace twinround

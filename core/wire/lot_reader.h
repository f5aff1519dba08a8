// Lots of yarn in a request, under `m`, `g` and `mPer100G`.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "fields.h"
#include "json_reader.h"
#include "result.h"
#include "yarn_lot.h"

namespace twinround {

// `list` is the list's pointer. A lot of neither length nor mass is a problem at its `g`.
std::vector<Problem> lots_of_nothing(const ReadText& read, std::span<const Field> table,
                                     std::string_view list);

// Precondition: lots_of_nothing found none.
std::vector<YarnLot> lots_in(const ReadText& read, std::string_view list);

// How many items a list has; none where it is left out.
int items_of(const ReadText& read, std::string_view list);

// Missing, and `instead` would do as well.
Problem required_instead(std::span<const Field> table, std::string_view pointer, int item,
                         const std::string& instead);

}  // namespace twinround

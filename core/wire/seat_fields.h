// What may be told of one seat of a class beside a request of `plan`.
#pragma once

#include <vector>

#include "fields.h"
#include "json_reader.h"
#include "odd.h"

namespace twinround {

// The fields of a request of `plan`, and under /inHand the yarn there is.
std::vector<Field> seat_fields();

// What a text read with them says of that yarn.
InHand in_hand(const ReadText& read);

}  // namespace twinround

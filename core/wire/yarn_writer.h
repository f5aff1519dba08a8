// The yarn of a plan, as JSON.
#pragma once

#include "json_writer.h"
#include "plan.h"

namespace twinround {

const char* word_of(Firmness firmness);

void write_yarn(JsonWriter& json, const YarnFigures& yarn);

}  // namespace twinround

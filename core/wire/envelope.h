// What stands around every answer.
#pragma once

#include <string>
#include <vector>

#include "json_writer.h"
#include "problems.h"
#include "result.h"

namespace twinround {

// Opens the reply's object; whoever writes the answer into it closes it.
void open_envelope(JsonWriter& json, bool ok);

// A whole reply that says what is wrong.
std::string refused(const std::vector<Problem>& problems);

// A whole reply with the answer under the question's name; `write` writes its value. Within the
// ranges of a request no figure is too large to be told; if one were, half an answer would be a
// lie, and it is refused.
template <class Write>
std::string answered(const char* name, const Write& write) {
  JsonWriter json;
  open_envelope(json, true);
  json.key(name);
  write(json);
  json.close_object();
  return json.all_finite() ? json.written() : refused({figure_too_large()});
}

}  // namespace twinround

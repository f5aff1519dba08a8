// The contract as JSON Schema 2020-12, made from the table of fields.
#pragma once

#include <string>

namespace twinround {

// The committed core/wire/schema.json, to the byte: two-space indent, a newline at the end.
std::string schema_text();

}  // namespace twinround

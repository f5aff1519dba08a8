// What the schema is put together from: definitions, notes, envelopes. Private to the schema.
#pragma once

#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "fields.h"
#include "json_writer.h"

namespace twinround {

using Words = std::span<const std::string_view>;

// Leaves the definition's object open.
void open_definition(JsonWriter& json, const char* name, const char* about, const char* type);
void write_list_of_words(JsonWriter& json, const char* key, Words words);
void write_required(JsonWriter& json, std::initializer_list<std::string_view> names);
void write_enum(JsonWriter& json, const char* name, const char* about, Words words);

// Problems and cautions: the numbers and words that go with a code stand flat beside it. `harms`
// where each also says how it harms.
void write_note(JsonWriter& json, const char* name, const char* about, Words codes,
                Words harms = {});

// `part` is what the envelope holds, the problems of kind `problem` where the question was refused.
void write_envelope(JsonWriter& json, const char* name, const char* about, const char* part,
                    const char* problem = nullptr);
// Either of two definitions.
void write_reply(JsonWriter& json, const char* name, const char* answered, const char* refused);

// How a question is refused where that is not as a plan is.
struct Refusal {
  const char* about = nullptr;
  const char* about_problem = nullptr;
  std::vector<std::string_view> codes;
};

// What the question `name` is answered with: NAMEReply, NAMEAnswered and NAME, and with codes of
// its own NAMERefused and NAMEProblem. Its request stands under NAMERequest already.
void write_answer(JsonWriter& json, const std::string& name, const char* about,
                  std::span<const Field> reply, const Refusal& refusal = {});

std::vector<std::string_view> joined(Words some, Words more);

}  // namespace twinround

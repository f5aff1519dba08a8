// The core as the page sees it: one function from text to text. Texts cross the border as UTF-8 in
// the module's own memory: the page writes a question and its text into the room it asked for, and
// reads the reply where it is told.
#include <cstddef>
#include <string>
#include <string_view>

#include "answer.h"

namespace {

// Both stay until the next question: the page copies the reply before it asks again.
std::string asked;
std::string reply;

}  // namespace

extern "C" {

// Room for a question and its text, one behind the other.
[[gnu::used, clang::export_name("room")]] char* twinround_room(std::size_t bytes) {
  asked.assign(bytes, '\0');
  return asked.data();
}

// Where the reply begins; the question is the first so many bytes of what was written.
[[gnu::used, clang::export_name("answer")]] const char* twinround_answer(
    std::size_t question_bytes) {
  const std::string_view all = asked;
  reply = twinround::answer(all.substr(0, question_bytes), all.substr(question_bytes));
  return reply.data();
}

// How many bytes the reply has.
[[gnu::used, clang::export_name("length")]] std::size_t twinround_length() {
  return reply.size();
}

}  // extern "C"

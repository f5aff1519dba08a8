// The core as the page sees it: one function from text to text.
#include <emscripten/bind.h>

#include <string>

#include "answer.h"

namespace {

// embind carries std::string, not views. Texts cross the border as UTF-8.
std::string answer_text(const std::string& question, const std::string& text) {
  return twinround::answer(question, text);
}

}  // namespace

EMSCRIPTEN_BINDINGS(twinround) {
  emscripten::function("answer", &answer_text);
}

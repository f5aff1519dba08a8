// Any bytes at all as a request, for libFuzzer (Debian: clang-14 and libclang-rt-14-dev). From the
// top of the repository:
//   clang++-14 -std=c++20 -O1 -g -fsanitize=fuzzer,address,undefined -fno-sanitize-recover=all \
//     -DJSON_NOEXCEPTION -Icore/base -Icore/facts -Icore/sock -Icore/wire \
//     core/*/*.cpp tests/fuzz/answer_fuzz.cpp -o /tmp/answer_fuzz
//   mkdir /tmp/corpus && for f in tests/golden/*/request.json; do
//     cp $f /tmp/corpus/$(basename $(dirname $f)); done
//   /tmp/answer_fuzz -max_len=4096 -max_total_time=300 /tmp/corpus
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "answer.h"

namespace {

void insist(bool truth) {
  if (!truth) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const std::string reply = twinround::answer("plan", text);
  const bool answered = reply.starts_with(R"({"ok":true,)");
  insist(answered || reply.starts_with(R"({"ok":false,)"));
  insist(reply.ends_with(answered ? "]}}" : "}]}"));
  // Refused at no field for a number: a figure of the plan was none.
  insist(reply.find(R"("field":"","code":"number_too_large")") == std::string::npos);
  // Of problems there are at most a few for each value read.
  insist(answered || reply.size() < 20 * size + 4000);
  return 0;
}

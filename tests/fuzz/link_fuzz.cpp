// Any bytes at all as a link, for libFuzzer (Debian: clang-14 and libclang-rt-14-dev). From the top
// of the repository:
//   clang++-14 -std=c++20 -O1 -g -fsanitize=fuzzer,address,undefined -fno-sanitize-recover=all \
//     -DJSON_NOEXCEPTION -Icore/base -Icore/facts -Icore/sock -Icore/knitting -Icore/teaching \
//     -Icore/wire \
//     core/*/*.cpp tests/fuzz/link_fuzz.cpp -o /tmp/link_fuzz
//   mkdir /tmp/links && for f in tests/wire/links/*.txt; do for way in 0 1 2; do
//     (printf $way; cat $f) > /tmp/links/$way-$(basename $f); done; done
//   /tmp/link_fuzz -max_len=2100 -max_total_time=300 /tmp/links
//
// The first byte chooses the way in: the question as JSON, the link as it stands, or a body and
// words that are sealed first, for by chance no bytes ever add up.
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "answer.h"
#include "link_number.h"
#include "link_seal.h"
#include "link_sheet.h"

namespace {

using namespace twinround;

void insist(bool truth) {
  if (!truth) std::abort();
}

void ask(const std::string& text) {
  const std::string reply = answer("link", text);
  const bool answered = reply.starts_with(R"({"ok":true,)");
  insist(answered || reply.starts_with(R"({"ok":false,)"));
  insist(reply.ends_with(answered ? "]}}" : "}]}"));
  insist(reply.size() < 20 * text.size() + 20000);
}

// Whatever opens says a sheet that makes a link within the limits, which says that sheet again.
void expect_to_come_back(const LinkSheet& sheet) {
  const std::string link = write_link(sheet);
  insist(link.find('_') <= kLinkMost || link.size() <= kLinkMost);
  LinkSheet back;
  insist(read_link(link, back) == LinkFault::none);
  insist(back.codes == sheet.codes && back.view == sheet.view && back.system == sheet.system);
  insist(back.locks == sheet.locks && back.rules == sheet.rules && back.rounds == sheet.rounds);
  insist(back.stitches == sheet.stitches && back.words.title == sheet.words.title);
  insist(back.words.note == sheet.words.note && back.words.yarns == sheet.words.yarns);
  insist((link[0] == '2') == (sheet.words.yarns > 0));
}

void open(std::string_view text) {
  LinkSheet sheet;
  if (read_link(text, sheet) == LinkFault::none) expect_to_come_back(sheet);
}

std::string letters_of(std::string_view bytes) {
  std::string letters;
  for (const char c : bytes) {
    const int value = letter_value(c);
    letters += letter_of(value >= 0 ? value : static_cast<std::uint8_t>(c) % kLetters);
  }
  return letters;
}

// Also with one letter changed, which no link survives.
void open_sealed(std::string_view bytes) {
  const std::size_t bar = std::min(bytes.find('_'), bytes.size());
  LinkParts parts;
  parts.version = 1 + static_cast<int>(bytes.size() % kLinkVersion);
  const std::string body = letters_of(bytes.substr(0, std::min<std::size_t>(bar, kBodyMost)));
  const std::string words =
      letters_of(bytes.substr(std::min(bar + 1, bytes.size())).substr(0, kWordsMost));
  parts.body = body;
  parts.words = words;
  std::string link = seal_link(parts);
  open(link);
  const std::size_t at = bytes.size() * 7 % link.size();
  link[at] = link[at] == 'x' ? 'y' : 'x';
  LinkSheet sheet;
  insist(read_link(link, sheet) != LinkFault::none);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const std::string text(reinterpret_cast<const char*>(data) + 1, size - 1);
  switch (data[0] % 3) {
    case 0:
      ask(text);
      break;
    case 1:
      open(text);
      break;
    default:
      open_sealed(text);
  }
  return 0;
}

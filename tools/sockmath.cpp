// sockmath: the core as a program. One question by name, its JSON on standard input, the reply on
// standard output. Exit 0: answered. 1: refused, the problems are in the reply. 2: misuse.
#include <array>
#include <cstdio>
#include <cstring>
#include <string>
#include <string_view>

#include "answer.h"
#include "schema.h"

namespace {

constexpr int kAnswered = 0;
constexpr int kRefused = 1;
constexpr int kMisuse = 2;

// A little over the most that the core reads (1 MiB, of a class): enough for the core itself to say
// that it is too long, and no reason to hold a whole film in memory.
constexpr std::size_t kMostRead = 1050624;  // 1026 KiB

constexpr const char* kUsage =
    "usage: sockmath plan < request.json   the plan of a pair of socks, as JSON\n"
    "       sockmath place < sock.json     where a pair in the making stands, as JSON\n"
    "       sockmath found < seen.json     the round found again from what is seen, as JSON\n"
    "       sockmath adjust < sock.json    the same with what is measured on the needles, as JSON\n"
    "       sockmath stripes < sock.json   stripes and leftovers on a pair, as JSON\n"
    "       sockmath supply < class.json   one pair for every yarn by every size of a class\n"
    "       sockmath weeks < class.json    how far each pair comes in each meeting\n"
    "       sockmath roster < class.json   a class seat by seat, and what it takes together\n"
    "       sockmath odd < request.json    what is odd about a pair, the most harmful first\n"
    "       sockmath drive < feet.json     sizes for many feet that nobody has measured\n"
    "       sockmath link < sheet.json     a sheet made into a link, or a link opened, as JSON\n"
    "       sockmath schema                the JSON Schema of requests and replies\n"
    "exit:  0 answered, 1 refused (the reply names the problems), 2 misuse\n";

int misuse() {
  std::fputs(kUsage, stderr);
  return kMisuse;
}

int trouble(const char* doing) {
  std::fprintf(stderr, "sockmath: %s failed\n", doing);
  return kMisuse;
}

bool read_input(std::string& text) {
  std::array<char, 4096> chunk;
  while (text.size() < kMostRead) {
    const std::size_t got = std::fread(chunk.data(), 1, chunk.size(), stdin);
    if (got == 0) break;
    text.append(chunk.data(), got);
  }
  return std::ferror(stdin) == 0;
}

bool write_output(std::string_view text) {
  return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() &&
         std::fflush(stdout) == 0;
}

bool was_refused(std::string_view reply) {
  return reply.rfind("{\"ok\":true", 0) != 0;
}

int tell(const char* question) {
  std::string request;
  if (!read_input(request)) return trouble("reading standard input");
  std::string reply = twinround::answer(question, request);
  const int status = was_refused(reply) ? kRefused : kAnswered;
  reply += '\n';
  return write_output(reply) ? status : trouble("writing standard output");
}

int tell_schema() {
  return write_output(twinround::schema_text()) ? kAnswered : trouble("writing standard output");
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return misuse();
  for (const char* question : {"plan", "adjust", "place", "found", "stripes", "supply", "weeks",
                               "roster", "odd", "drive", "link"}) {
    if (std::strcmp(argv[1], question) == 0) return tell(question);
  }
  if (std::strcmp(argv[1], "schema") == 0) return tell_schema();
  return misuse();
}

// Texts worn by chance, for the tests of what anybody may send.
#pragma once

#include <algorithm>
#include <random>
#include <string>

namespace twinround {

// One to `most` places each overwritten, cut out, doubled or grown by a sign that means something
// in JSON, or to a decoder of UTF-8.
inline std::string worn(std::string text, std::mt19937& random, std::size_t most) {
  const std::string pool = "{}[]:,\"\\0123456789.eE+-nulltrefasNIiy /*~\x01\xC3\xFF";
  const std::size_t changes = 1 + random() % most;
  for (std::size_t change = 0; change < changes && !text.empty(); ++change) {
    const std::size_t at = random() % text.size();
    const std::size_t length = std::min<std::size_t>(random() % 9, text.size() - at);
    switch (random() % 4) {
      case 0:
        text[at] = pool[random() % pool.size()];
        break;
      case 1:
        text.erase(at, length);
        break;
      case 2:
        text.insert(at, text.substr(random() % text.size(), random() % 40));
        break;
      default:
        text.insert(at, 1, pool[random() % pool.size()]);
    }
  }
  return text;
}

}  // namespace twinround

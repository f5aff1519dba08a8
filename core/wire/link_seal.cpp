#include "link_seal.h"

#include <algorithm>

#include "link_number.h"
#include "link_problems.h"

namespace twinround {
namespace {

constexpr std::uint64_t kPrime = (1U << 28U) - 57;
// Any number serves that lets no two changed letters cancel out, at whatever distance: the tests
// try all of them.
constexpr std::uint64_t kBase = 31415926;

constexpr char kBeforeWords = '_';
constexpr int kCountLetters = 2;
constexpr std::int64_t kLengths = kBodyMost + 1;  // from 0

std::string head_letters(const LinkParts& parts, std::string_view after_head) {
  const std::int64_t check = link_check(parts.version, after_head);
  const std::int64_t head = check * kLengths + static_cast<std::int64_t>(parts.body.size());
  return letter_of(parts.version) + fixed_letters(head, kHeadLetters - 1);
}

bool is_letter(char c) {
  return letter_value(c) >= 0;
}

// The words behind their own count of letters.
Result<std::string> unseal_words(std::string_view counted) {
  if (counted.size() < kCountLetters) return link_cut();
  const auto count = static_cast<std::size_t>(read_fixed(counted.substr(0, kCountLetters)));
  counted.remove_prefix(kCountLetters);
  if (counted.size() < count) return link_cut();
  if (counted.size() > count) return link_damaged();
  return std::string(counted);
}

}  // namespace

std::uint32_t link_check(int version, std::string_view text) {
  std::uint64_t check = static_cast<std::uint64_t>(version);
  for (const char c : text) {
    const int value = letter_value(c);
    check = (check * kBase + static_cast<std::uint64_t>(value < 0 ? kLetters : value) + 1) % kPrime;
  }
  return static_cast<std::uint32_t>(check);
}

std::string seal_link(const LinkParts& parts) {
  std::string after_head = parts.body;
  if (!parts.words.empty()) {
    after_head += kBeforeWords;
    after_head += fixed_letters(static_cast<std::int64_t>(parts.words.size()), kCountLetters);
    after_head += parts.words;
  }
  return head_letters(parts, after_head) + after_head;
}

Result<LinkParts> unseal_link(std::string_view text) {
  LinkParts parts;
  parts.version = text.empty() || text[0] > 'Z' ? 0 : std::max(0, letter_value(text[0]));
  if (parts.version == 0) return link_not_ours();
  if (parts.version > kLinkVersion) return link_newer(parts.version);

  const auto bar = std::min(text.find(kBeforeWords), text.size());
  if (bar > kLinkMost) return link_too_long(kLinkMost);
  if (text.size() - bar > 1 + kCountLetters + kWordsMost) return link_too_long(kWordsMost);
  if (bar < kHeadLetters) return bar == text.size() ? link_cut() : link_damaged();

  const std::string_view body = text.substr(kHeadLetters, bar - kHeadLetters);
  const std::string_view words = text.substr(std::min(bar + 1, text.size()));
  if (!std::all_of(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(bar), is_letter) ||
      !std::all_of(words.begin(), words.end(), is_letter)) {
    return link_damaged();
  }
  const auto length =
      static_cast<std::size_t>(read_fixed(text.substr(1, kHeadLetters - 1)) % kLengths);
  if (body.size() != length) return body.size() < length ? link_cut() : link_damaged();
  parts.body = body;
  if (bar < text.size()) {
    const Result<std::string> unsealed = unseal_words(words);
    if (!unsealed.ok()) return unsealed.problems();
    parts.words = unsealed.value();
  }
  if (text.substr(0, kHeadLetters) != head_letters(parts, text.substr(kHeadLetters))) {
    return link_damaged();
  }
  return parts;
}

}  // namespace twinround

#include "link_seal.h"

#include <algorithm>

#include "link_number.h"

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

bool are_letters(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return letter_value(c) >= 0; });
}

// Whether there are as many letters as there should be.
LinkFault fault_of_size(std::size_t size, std::int64_t expected) {
  const auto letters = static_cast<std::int64_t>(size);
  if (letters == expected) return LinkFault::none;
  return letters < expected ? LinkFault::cut : LinkFault::damaged;
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
  std::string after_head(parts.body);
  if (!parts.words.empty()) {
    after_head += kBeforeWords;
    after_head += fixed_letters(static_cast<std::int64_t>(parts.words.size()), kCountLetters);
    after_head += parts.words;
  }
  return head_letters(parts, after_head) + after_head;
}

LinkFault unseal_link(std::string_view text, LinkParts& parts) {
  parts.version = text.empty() || text[0] > 'Z' ? 0 : std::max(0, letter_value(text[0]));
  if (parts.version == 0) return LinkFault::not_ours;
  if (parts.version > kLinkVersion) return LinkFault::newer;

  const auto bar = std::min(text.find(kBeforeWords), text.size());
  std::string_view counted = text.substr(bar);  // the words with what stands before them
  if (bar > kLinkMost || counted.size() > 1 + kCountLetters + kWordsMost) {
    return LinkFault::too_long;
  }
  if (bar < kHeadLetters) return counted.empty() ? LinkFault::cut : LinkFault::damaged;

  const std::string_view head = text.substr(0, kHeadLetters);
  parts.body = text.substr(kHeadLetters, bar - kHeadLetters);
  if (!counted.empty()) counted.remove_prefix(1);
  if (!are_letters(head) || !are_letters(parts.body) || !are_letters(counted)) {
    return LinkFault::damaged;
  }
  LinkFault fault = fault_of_size(parts.body.size(), read_fixed(head.substr(1)) % kLengths);
  if (fault == LinkFault::none && bar < text.size()) {
    if (counted.size() <= kCountLetters) return LinkFault::cut;
    parts.words = counted.substr(kCountLetters);
    fault = fault_of_size(parts.words.size(), read_fixed(counted.substr(0, kCountLetters)));
  }
  if (fault != LinkFault::none) return fault;
  return head == head_letters(parts, text.substr(kHeadLetters)) ? LinkFault::none
                                                                : LinkFault::damaged;
}

}  // namespace twinround

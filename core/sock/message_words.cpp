#include "message_words.h"

#include <cmath>

#include "rounding.h"

namespace twinround {

std::string percent(double share) {
  const int whole = round_half_up(std::abs(share) * 100.0);
  return std::to_string(whole) + " %";
}

std::string cm(Length length) {
  const int tenths = round_half_up(length.mm());
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " cm";
}

}  // namespace twinround

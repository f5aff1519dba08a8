// Shoe sizes turned into foot lengths. A shoe size is a poor stand-in for a measured foot.
#pragma once

#include <optional>

#include "units.h"

namespace twinround {

// The UK and US scales are those of grown-ups' shoes: children's sizes there start again at 1 and
// are not covered. Mondopoint and the European scale run through from child to man.
enum class ShoeScale { mondopoint, eu, us_men, us_women, uk };

// A scale's rule: foot length = step x (size + offset).
struct ShoeRule {
  Length step;  // of one whole number; of mondopoint, whose sizes are 5 mm apart, 1 mm
  double offset = 0;
  Length uncertainty;  // give or take: one size of the scale (uk: and half its rules' gap)
};
ShoeRule shoe_rule(ShoeScale scale);

struct ShoeFoot {
  Length length;       // the middle of what the size means
  Length uncertainty;  // give or take, as the scale's rule says
};

// Foot length for a size. Not range-checked: an absurd size gives an absurd length, which the
// caller refuses.
ShoeFoot foot_from_shoe(ShoeScale scale, double size);

// The grown-ups' English and American sizes begin with this one. From memory.
inline constexpr double kLeastGrownSize = 1.0;

struct ShoeSizes {
  double from = 0, to = 0;
};

// The sizes made (whole ones; half ones too of the English and American scales; every 5 mm of
// mondopoint) whose foot is no shorter than `least` and no longer than `most`; children's English
// and American sizes left out. Absent where there is none.
std::optional<ShoeSizes> shoe_sizes(ShoeScale scale, Length least, Length most);

}  // namespace twinround

// Whole pairs shared out, none lost.
#pragma once

#include <vector>

namespace twinround {

// `pairs` in proportion to `shares`, by largest remainder: everyone has the whole part of what is
// due to him, and the pairs left go one each to the largest remainders; of equal ones (within a
// tie) to the larger share, of equal shares to the first. Adds up to `pairs`. Preconditions: pairs
// >= 0, no share below nothing; where all are nothing, nobody has any.
std::vector<int> allot(int pairs, const std::vector<double>& shares);

}  // namespace twinround

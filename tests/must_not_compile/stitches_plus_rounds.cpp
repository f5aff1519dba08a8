// layer: base
// expect: no match for .operator\+
// Stitches are counted across, rounds upward.
#include "units.h"

using namespace twinround;

#ifdef CONTROL
const Stitches sum = Stitches(40) + Stitches(4);
#else
const auto sum = Stitches(40) + Rounds(4);
#endif

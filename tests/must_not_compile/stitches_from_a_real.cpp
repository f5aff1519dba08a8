// layer: base
// expect: use of deleted function
// A count is never a double: base/rounding makes it, by a named rule.
#include "rounding.h"
#include "units.h"

using namespace twinround;

#ifdef CONTROL
const Stitches stitches = Stitches(nearest_multiple(40.4, 4, Tie::down));
#else
const Stitches stitches = Stitches(40.4);
#endif

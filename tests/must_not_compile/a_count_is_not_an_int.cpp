// layer: base
// expect: cannot convert .*int
// A count leaves by its name.
#include "units.h"

using namespace twinround;

#ifdef CONTROL
const int stitches = Stitches(40).value();
#else
const int stitches = Stitches(40);
#endif

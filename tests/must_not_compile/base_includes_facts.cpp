// layer: base
// expect: needle.h: No such file
// Base knows nobody.
#ifdef CONTROL
#include "units.h"
#else
#include "needle.h"
#endif

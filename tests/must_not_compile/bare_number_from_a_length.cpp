// layer: base
// expect: cannot convert .*Length
// Nor does it lose its unit unasked.
#include "units.h"

using namespace twinround;

#ifdef CONTROL
const double foot = Length::from_mm(246.0).mm();
#else
const double foot = Length::from_mm(246.0);
#endif

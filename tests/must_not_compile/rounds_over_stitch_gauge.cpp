// layer: base
// expect: no match for .operator/
// The gauge across says nothing about height.
#include "units.h"

using namespace twinround;

const Length inch4 = Length::from_in(4);

#ifdef CONTROL
const Length height = Rounds(28) / RoundGauge::per(28, inch4);
#else
const Length height = Rounds(28) / StitchGauge::per(20, inch4);
#endif

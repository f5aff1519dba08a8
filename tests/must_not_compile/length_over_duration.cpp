// layer: base
// expect: no match for .operator/
// A ratio is between like and like.
#include "units.h"

using namespace twinround;

const Duration evening = Duration::from_minutes(90);

#ifdef CONTROL
const double share = Duration::from_minutes(30) / evening;
#else
const double share = Length::from_m(30) / evening;
#endif

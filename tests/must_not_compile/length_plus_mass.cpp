// layer: base
// expect: no match for .operator\+
// A length of yarn and a weight of yarn do not add.
#include "units.h"

using namespace twinround;

const Length metres = Length::from_m(180);
const Mass grams = Mass::from_g(90);

#ifdef CONTROL
const Length sum = metres + metres;
const Mass both = grams + grams;
#else
const auto sum = metres + grams;
#endif

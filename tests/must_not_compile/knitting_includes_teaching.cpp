// layer: knitting
// expect: roster.h: No such file
// A sock on the needles does not know whose class it is knit in.
#ifdef CONTROL
#include "plan.h"
#include "yarn_left.h"
#else
#include "roster.h"
#endif

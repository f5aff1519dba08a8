// layer: teaching
// expect: yarn_left.h: No such file
// A class is planned before anything is on its needles.
#ifdef CONTROL
#include "plan.h"
#include "roster.h"
#else
#include "yarn_left.h"
#endif

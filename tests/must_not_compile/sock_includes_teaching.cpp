// layer: sock
// expect: roster.h: No such file
// One pair does not know how many are planned at once.
#ifdef CONTROL
#include "gauge.h"
#include "needle.h"
#else
#include "roster.h"
#endif

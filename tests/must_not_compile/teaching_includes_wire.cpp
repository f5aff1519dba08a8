// layer: teaching
// expect: answer.h: No such file
// What is reckoned for many socks does not know that it is asked in JSON.
#ifdef CONTROL
#include "plan.h"
#include "roster.h"
#else
#include "answer.h"
#endif

// layer: sock
// expect: answer.h: No such file
// The arithmetic does not know that it is asked in JSON.
#ifdef CONTROL
#include "gauge.h"
#include "needle.h"
#else
#include "answer.h"
#endif

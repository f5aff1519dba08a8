// layer: facts
// expect: gauge.h: No such file
// A published table does not know what it is used for.
#ifdef CONTROL
#include "needle.h"
#include "units.h"
#else
#include "gauge.h"
#endif

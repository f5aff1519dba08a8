// layer: sock
// expect: exception handling disabled
// An error is a value; a throw would end the page.
#include "result.h"

using namespace twinround;

Result<int> halve(int stitches);

Result<int> halve(int stitches) {
  if (stitches % 2 == 0) return stitches / 2;
#ifdef CONTROL
  return Problem{"/stitchCount", "not_even", {}, {}, "an even number is needed"};
#else
  throw stitches;
#endif
}

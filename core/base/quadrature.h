// Errors that do not know of each other, taken together.
#pragma once

#include <cmath>

namespace twinround {

// sqrt(a^2 + b^2 + c^2), of relative errors or of any one unit. Not std::hypot: its last bit
// differs between the native and the WebAssembly library.
inline double in_quadrature(double a, double b, double c = 0) {
  return std::sqrt(a * a + b * b + c * c);
}

}  // namespace twinround

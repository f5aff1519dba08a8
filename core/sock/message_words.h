// Figures inside the core's plain English messages: SI, rounded for reading. For nothing else.
#pragma once

#include <string>

#include "units.h"

namespace twinround {

// A share as whole percent, without its sign: 0.883 is "88 %".
std::string percent(double share);

// A length to the millimetre: 310 mm is "31.0 cm".
std::string cm(Length length);

}  // namespace twinround

// Requests by chance, every one within the contract's ranges.
#pragma once

#include <random>

#include "request_text.h"

namespace twinround {

// Any value that each field allows, ends of ranges among them: feet and socks as no one has them.
RequestText wild_request(std::mt19937& random);

// A foot, a swatch and wishes such as people have.
RequestText likely_request(std::mt19937& random);

}  // namespace twinround

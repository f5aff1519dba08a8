// Yarn at hand as it is told: by a length or a mass, or by a mass and what 100 g of it measure.
#pragma once

#include <optional>

#include "units.h"

namespace twinround {

// Precondition: a length or a mass is told.
struct YarnLot {
  std::optional<Length> length;
  std::optional<Mass> mass;
  std::optional<Length> per_100g;  // counts where there is no length
};

// Its own linear density in tex; nothing where only a length or only a mass is told.
std::optional<double> tex_of_lot(const YarnLot& lot);

// What was not told follows from its own thickness, or else from that of the sock's yarn, in tex.
Length length_of_lot(const YarnLot& lot, double sock_tex);
Mass mass_of_lot(const YarnLot& lot, double sock_tex);

}  // namespace twinround

#include "yarn_lot.h"

namespace twinround {

std::optional<double> tex_of_lot(const YarnLot& lot) {
  if (lot.length && lot.mass) return 1000 * lot.mass->g() / lot.length->m();
  if (!lot.length && lot.per_100g) return 100000 / lot.per_100g->m();
  return {};
}

Length length_of_lot(const YarnLot& lot, double sock_tex) {
  if (lot.length) return *lot.length;
  return Length::from_m(1000 * lot.mass->g() / tex_of_lot(lot).value_or(sock_tex));
}

Mass mass_of_lot(const YarnLot& lot, double sock_tex) {
  if (lot.mass) return *lot.mass;
  return Mass::from_g(lot.length->m() * tex_of_lot(lot).value_or(sock_tex) / 1000);
}

}  // namespace twinround

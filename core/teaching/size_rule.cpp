#include "size_rule.h"

#include "rounding.h"
#include "tube.h"

namespace twinround {

namespace {

// The foot that asks for a sock of that length.
Length foot_of(const SockMake& make, Length sock) {
  return (sock - make.leg.height) / (1.0 + make.length_ease + make.leg.of_foot);
}

bool within(double value, double least, double most) {
  return at_least(value, least) && at_least(most, value);
}

}  // namespace

Length sock_length(const SockMake& make, Length foot) {
  return foot * (1.0 + make.length_ease) + make.leg.of(foot);
}

Length tube_girth(const SockMake& make, Stitches n) {
  return n / make.gauge;
}

Length heel_passed(const SockMake& make, Stitches n) {
  return kPassUse * n.value() * make.widest_stitch;
}

LengthBand lengths_served(const SockMake& make, Length foot) {
  const Length sock = sock_length(make, foot);
  return {foot_of(make, kLeastLength * sock), foot_of(make, kMostLength * sock)};
}

bool serves(const SockMake& make, const SockSize& size, const WholeFoot& foot) {
  return within(foot.ball / tube_girth(make, size.stitches), kLeastStretch, kMostStretch) &&
         at_least(kPassUse, girth_use(foot.heel, size.stitches, make.widest_stitch)) &&
         within(sock_length(make, foot.length) / sock_length(make, size.foot), kLeastLength,
                kMostLength);
}

}  // namespace twinround

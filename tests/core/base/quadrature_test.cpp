#include "quadrature.h"

#include <gtest/gtest.h>

namespace twinround {
namespace {

TEST(InQuadrature, IsTheDiagonal) {
  EXPECT_EQ(in_quadrature(3, 4), 5);
  EXPECT_EQ(in_quadrature(2, 3, 6), 7);
  EXPECT_EQ(in_quadrature(-3, 4), 5);
  EXPECT_EQ(in_quadrature(0.1, 0), 0.1);
}

}  // namespace
}  // namespace twinround

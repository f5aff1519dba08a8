#include "yarn_lot.h"

#include <gtest/gtest.h>

namespace twinround {
namespace {

constexpr double kSockTex = 500;  // 200 m in 100 g

YarnLot lot(std::optional<double> m, std::optional<double> g, std::optional<double> per_100g) {
  YarnLot told;
  if (m) told.length = Length::from_m(*m);
  if (g) told.mass = Mass::from_g(*g);
  if (per_100g) told.per_100g = Length::from_m(*per_100g);
  return told;
}

// By hand; tex is grams a kilometre (ISO 1144).
TEST(YarnLot, WhatIsNotToldFollowsFromItsThickness) {
  struct Case {
    YarnLot lot;
    std::optional<double> tex;
    double m, g;
  };
  const Case cases[] = {
      {lot(400, 100, {}), 250, 400, 100},  {lot({}, 150, 400), 250, 600, 150},
      {lot({}, 150, {}), {}, 300, 150},    {lot(300, {}, {}), {}, 300, 150},
      {lot(400, 100, 210), 250, 400, 100},  // weighed and measured: the label has no say
  };
  for (const Case& one : cases) {
    EXPECT_EQ(tex_of_lot(one.lot).has_value(), one.tex.has_value());
    EXPECT_NEAR(tex_of_lot(one.lot).value_or(0), one.tex.value_or(0), 1e-9);
    EXPECT_NEAR(length_of_lot(one.lot, kSockTex).m(), one.m, 1e-9);
    EXPECT_NEAR(mass_of_lot(one.lot, kSockTex).g(), one.g, 1e-9);
  }
}

}  // namespace
}  // namespace twinround

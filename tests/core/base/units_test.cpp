#include "units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>
#include <type_traits>

namespace twinround {
namespace {

// Exact by definition, so compared bit for bit: international yard and pound agreement, 1959.
TEST(Units, AnInchIs25Point4Millimetres) {
  EXPECT_EQ(Length::from_in(1).mm(), 25.4);
  EXPECT_EQ(Length::from_in(4).mm(), 101.6);
  EXPECT_EQ(Length::from_mm(25.4).in(), 1.0);
}

TEST(Units, AYardIs0Point9144Metres) {
  EXPECT_EQ(Length::from_yd(1).m(), 0.9144);
  EXPECT_EQ(Length::from_yd(1).mm(), 914.4);
  EXPECT_EQ(Length::from_m(0.9144).yd(), 1.0);
}

TEST(Units, AnOunceIs28Point349523125Grams) {
  EXPECT_EQ(Mass::from_oz(1).g(), 28.349523125);
  EXPECT_EQ(Mass::from_g(28.349523125).oz(), 1.0);
}

TEST(Units, APoundIs453Point59237Grams) {
  EXPECT_EQ(Mass::from_lb(1).g(), 453.59237);
  EXPECT_EQ(Mass::from_g(453.59237).lb(), 1.0);
}

TEST(Units, AYardIs36InchesAndAPound16Ounces) {
  EXPECT_DOUBLE_EQ(Length::from_in(36).mm(), Length::from_yd(1).mm());
  EXPECT_DOUBLE_EQ(Mass::from_oz(16).g(), Mass::from_lb(1).g());
}

TEST(Units, MetricPrefixesAreTensAndThousands) {
  EXPECT_EQ(Length::from_cm(24).mm(), 240.0);
  EXPECT_EQ(Length::from_m(2).mm(), 2000.0);
  EXPECT_EQ(Length::from_mm(240).cm(), 24.0);
  EXPECT_EQ(Length::from_mm(2000).m(), 2.0);
}

TEST(Units, AMinuteIs60Seconds) {
  EXPECT_EQ(Duration::from_seconds(60).minutes(), 1.0);
  EXPECT_EQ(Duration::from_seconds(90).minutes(), 1.5);
  EXPECT_EQ(Duration::from_minutes(3).minutes(), 3.0);
}

TEST(Units, ARightAngleIs90Degrees) {
  EXPECT_DOUBLE_EQ(Angle::from_radians(std::numbers::pi / 2).degrees(), 90.0);
  EXPECT_DOUBLE_EQ(Angle::from_radians(-std::numbers::pi).degrees(), -180.0);
}

TEST(Units, EveryReaderUndoesItsMaker) {
  for (const double x : {0.0, 0.1, 1.0, 9.5, 366.0, 5000.0, -3.25}) {
    SCOPED_TRACE(x);
    EXPECT_DOUBLE_EQ(Length::from_mm(x).mm(), x);
    EXPECT_DOUBLE_EQ(Length::from_cm(x).cm(), x);
    EXPECT_DOUBLE_EQ(Length::from_m(x).m(), x);
    EXPECT_DOUBLE_EQ(Length::from_in(x).in(), x);
    EXPECT_DOUBLE_EQ(Length::from_yd(x).yd(), x);
    EXPECT_DOUBLE_EQ(Mass::from_g(x).g(), x);
    EXPECT_DOUBLE_EQ(Mass::from_oz(x).oz(), x);
    EXPECT_DOUBLE_EQ(Mass::from_lb(x).lb(), x);
  }
}

TEST(Units, LengthsAddScaleAndDivideIntoARatio) {
  const Length foot = Length::from_mm(240);
  const Length leg = Length::from_cm(20);
  EXPECT_EQ((foot + leg).mm(), 440.0);
  EXPECT_EQ((foot - leg).mm(), 40.0);
  EXPECT_EQ((foot * 0.5).mm(), 120.0);
  EXPECT_EQ((0.5 * foot).mm(), 120.0);
  EXPECT_EQ((foot / 3).mm(), 80.0);
  EXPECT_EQ(foot / leg, 1.2);
}

TEST(Units, LengthsOfDifferentUnitsCompareAsLengths) {
  EXPECT_LT(Length::from_cm(2.5), Length::from_in(1));
  EXPECT_GT(Length::from_m(1), Length::from_yd(1));
  EXPECT_EQ(Length::from_cm(1), Length::from_mm(10));
  EXPECT_NE(Length::from_cm(1), Length::from_mm(11));
}

TEST(Units, ALengthThatIsNotANumberIsNeitherLongerNorShorter) {
  const Length lost = Length::from_mm(std::numeric_limits<double>::quiet_NaN());
  EXPECT_FALSE(lost < Length::from_mm(1));
  EXPECT_FALSE(lost > Length::from_mm(1));
  EXPECT_FALSE(lost == lost);
}

TEST(Units, AnUnsetQuantityIsNothing) {
  Length length;
  Mass mass;
  Duration time;
  EXPECT_EQ(length.mm(), 0.0);
  EXPECT_EQ(mass.g(), 0.0);
  EXPECT_EQ(time.minutes(), 0.0);
  EXPECT_EQ(Stitches().value(), 0);
  EXPECT_EQ(StitchGauge().per_mm(), 0.0);
}

TEST(Units, CountsAddAndScaleAndCompare) {
  Stitches count(40);
  EXPECT_EQ((count + Stitches(4)).value(), 44);
  EXPECT_EQ((count - Stitches(4)).value(), 36);
  EXPECT_EQ((count * 2).value(), 80);
  count += Stitches(4);
  EXPECT_EQ(count, Stitches(44));
  EXPECT_LT(Rounds(16), Rounds(17));
}

TEST(Units, AGaugeTurnsALengthIntoStitchesAndBack) {
  const StitchGauge gauge = StitchGauge::per(20, Length::from_in(4));
  EXPECT_DOUBLE_EQ(gauge.per_mm(), 20 / 101.6);
  EXPECT_DOUBLE_EQ(gauge * Length::from_in(8), 40.0);
  EXPECT_DOUBLE_EQ(Length::from_in(8) * gauge, 40.0);
  EXPECT_DOUBLE_EQ((Stitches(40) / gauge).in(), 8.0);
  EXPECT_DOUBLE_EQ((gauge * 1.4).per_mm(), 28 / 101.6);
  EXPECT_LT(gauge, StitchGauge::per_mm(0.2));
}

// A rule of the trade as it is printed: 9 in x 0.9 x 7.5 st/in = 60.75 stitches before rounding.
TEST(Units, NineInchesAtTenPercentEaseAndSevenAndAHalfAnInchAre60Point75) {
  const Length girth = Length::from_in(9) * 0.9;
  EXPECT_NEAR(girth * StitchGauge::per(7.5, Length::from_in(1)), 60.75, 1e-12);
}

// What must not compile, asked of the compiler without failing the build.
template <class A, class B>
concept Addable = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept Divides = requires(A a, B b) {
  a / b;
};
template <class A, class B>
concept Multiplies = requires(A a, B b) {
  a* b;
};

TEST(Units, UnitsDoNotMix) {
  EXPECT_TRUE((Addable<Length, Length>));
  EXPECT_FALSE((Addable<Length, Mass>));
  EXPECT_FALSE((Addable<Length, double>));
  EXPECT_TRUE((Addable<Stitches, Stitches>));
  EXPECT_FALSE((Addable<Stitches, Rounds>));
  EXPECT_FALSE((Addable<Stitches, int>));
  EXPECT_FALSE((Comparable<Length, Mass>));
  EXPECT_FALSE((Comparable<Length, double>));
  EXPECT_FALSE((Comparable<Stitches, Rounds>));
  EXPECT_FALSE((Comparable<StitchGauge, RoundGauge>));
  EXPECT_TRUE((Divides<Stitches, StitchGauge>));
  EXPECT_FALSE((Divides<Stitches, RoundGauge>));
  EXPECT_FALSE((Multiplies<Length, Length>));
  EXPECT_FALSE((Multiplies<Mass, StitchGauge>));
}

TEST(Units, ABareNumberIsNeitherALengthNorACount) {
  EXPECT_FALSE((std::is_convertible_v<double, Length>));
  EXPECT_FALSE((std::is_constructible_v<Length, double>));
  EXPECT_FALSE((std::is_convertible_v<int, Stitches>));
  EXPECT_TRUE((std::is_constructible_v<Stitches, int>));
  EXPECT_FALSE((std::is_constructible_v<Stitches, double>));
  EXPECT_FALSE((std::is_constructible_v<Stitches, float>));
  EXPECT_FALSE((std::is_constructible_v<Stitches, Rounds>));
  EXPECT_FALSE((std::is_constructible_v<StitchGauge, double>));
}

}  // namespace
}  // namespace twinround

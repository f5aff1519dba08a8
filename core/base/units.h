// Strong values for everything the sock is measured in. A bare number enters through a named maker
// and leaves through a named reader, so a unit can be neither forgotten nor mixed up.
#pragma once

#include <compare>
#include <concepts>
#include <numbers>

namespace twinround {

// What a length, a mass and a duration share: they add, compare, scale, and divide into a ratio.
// Each unit derives from it with its own name, so that a Length never meets a Mass.
template <class Self>
class Quantity {
 public:
  friend constexpr Self operator+(Self a, Self b) { return Self::of(a.base_ + b.base_); }
  friend constexpr Self operator-(Self a, Self b) { return Self::of(a.base_ - b.base_); }
  friend constexpr Self operator*(Self a, double factor) { return Self::of(a.base_ * factor); }
  friend constexpr Self operator*(double factor, Self a) { return Self::of(factor * a.base_); }
  friend constexpr Self operator/(Self a, double divisor) { return Self::of(a.base_ / divisor); }
  friend constexpr double operator/(Self a, Self b) { return a.base_ / b.base_; }
  friend constexpr std::partial_ordering operator<=>(Self a, Self b) { return a.base_ <=> b.base_; }
  friend constexpr bool operator==(Self a, Self b) { return a.base_ == b.base_; }

 protected:
  constexpr Quantity() = default;
  static constexpr Self of(double base) {
    Self made;
    made.base_ = base;
    return made;
  }
  constexpr double base() const { return base_; }

 private:
  double base_ = 0;
};

// A length of knitting, of foot or of yarn. Base unit millimetre.
// 1 in = 25.4 mm and 1 yd = 0.9144 m exactly (international yard and pound, 1959).
class Length : public Quantity<Length> {
 public:
  constexpr Length() = default;
  static constexpr Length from_mm(double mm) { return of(mm); }
  static constexpr Length from_cm(double cm) { return of(cm * 10.0); }
  static constexpr Length from_m(double m) { return of(m * 1000.0); }
  static constexpr Length from_in(double in) { return of(in * 25.4); }
  static constexpr Length from_yd(double yd) { return of(yd * 914.4); }
  constexpr double mm() const { return base(); }
  constexpr double cm() const { return base() / 10.0; }
  constexpr double m() const { return base() / 1000.0; }
  constexpr double in() const { return base() / 25.4; }
  constexpr double yd() const { return base() / 914.4; }
};

// A mass of yarn. Base unit gram. 1 oz = 28.349523125 g exactly (avoirdupois, 1959).
class Mass : public Quantity<Mass> {
 public:
  constexpr Mass() = default;
  static constexpr Mass from_g(double g) { return of(g); }
  static constexpr Mass from_oz(double oz) { return of(oz * 28.349523125); }
  static constexpr Mass from_lb(double lb) { return of(lb * 453.59237); }
  constexpr double g() const { return base(); }
  constexpr double oz() const { return base() / 28.349523125; }
  constexpr double lb() const { return base() / 453.59237; }
};

// A span of knitting time. Base unit minute.
class Duration : public Quantity<Duration> {
 public:
  constexpr Duration() = default;
  static constexpr Duration from_minutes(double minutes) { return of(minutes); }
  static constexpr Duration from_seconds(double seconds) { return of(seconds / 60.0); }
  constexpr double minutes() const { return base(); }
};

// An angle, as a knitter sees it on the sock. Base unit radian.
class Angle : public Quantity<Angle> {
 public:
  constexpr Angle() = default;
  static constexpr Angle from_radians(double radians) { return of(radians); }
  constexpr double degrees() const { return base() * 180.0 / std::numbers::pi; }
};

// A count of `Unit` (stitches, rounds). Whole by construction: a real number gets here only through
// base/rounding, which is why a floating-point argument does not compile.
template <class Unit>
class Count {
 public:
  constexpr Count() = default;
  constexpr explicit Count(int value) : value_(value) {}
  Count(std::floating_point auto) = delete;
  constexpr int value() const { return value_; }

  friend constexpr Count operator+(Count a, Count b) { return Count(a.value_ + b.value_); }
  friend constexpr Count operator-(Count a, Count b) { return Count(a.value_ - b.value_); }
  friend constexpr Count operator*(Count a, int times) { return Count(a.value_ * times); }
  constexpr Count& operator+=(Count other) { return *this = *this + other; }
  friend constexpr auto operator<=>(Count, Count) = default;

 private:
  int value_ = 0;
};

struct StitchUnit {};
struct RoundUnit {};
using Stitches = Count<StitchUnit>;
using Rounds = Count<RoundUnit>;

// How many of `Unit` fit along a length: the gauge. Base unit: a millimetre.
template <class Unit>
class Density {
 public:
  constexpr Density() = default;
  static constexpr Density per_mm(double value) { return Density(value); }
  static constexpr Density per(double count, Length along) { return Density(count / along.mm()); }
  constexpr double per_mm() const { return per_mm_; }

  // The real number of stitches (rounds) along a length; base/rounding makes it a count.
  friend constexpr double operator*(Density d, Length along) { return d.per_mm_ * along.mm(); }
  friend constexpr double operator*(Length along, Density d) { return d * along; }
  friend constexpr Density operator*(Density d, double factor) {
    return Density(d.per_mm_ * factor);
  }
  friend constexpr auto operator<=>(Density, Density) = default;

  // The length that a count takes up.
  friend constexpr Length operator/(Count<Unit> count, Density d) {
    return Length::from_mm(count.value() / d.per_mm_);
  }

 private:
  constexpr explicit Density(double value) : per_mm_(value) {}
  double per_mm_ = 0;
};
using StitchGauge = Density<StitchUnit>;
using RoundGauge = Density<RoundUnit>;

}  // namespace twinround

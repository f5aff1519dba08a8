#include "needle.h"

#include <cmath>

#include "rounding.h"

namespace twinround {

namespace {

constexpr Length mm(double value) {
  return Length::from_mm(value);
}

// Names from 2 to 10 mm: a UK needle chart, read as UK:mm:US. Other charts disagree at 2.25, 2.5
// and 3.0 mm; 2.5 mm is not on this one and so has no name here.
//
// US 000 and US 17 are in no row of it. They are the two ends, out of the chart's reach, of needle
// ranges in the Craft Yarn Council's Standard Yarn Weight System: category 0 is "1.5-2.25 mm" and
// "000-1", category 6 "8-12.75 mm" and "11-17", so 1.5 mm is 000 and 12.75 mm is 17. Derived: both
// columns of a range begin and end with the same needle, as they do wherever the chart has it.
//
// UK 000 (10 mm) and US 000 (1.5 mm) are different needles.
// clang-format off
constexpr std::array<NeedleName, 18> kNeedles = {{
    {mm(1.5),   "000",    ""},
    {mm(2),     "0",      "14"},
    {mm(2.25),  "1",      "13"},
    {mm(2.75),  "2",      "12"},
    {mm(3),     "",       "11"},
    {mm(3.25),  "3",      "10"},
    {mm(3.5),   "4",      ""},
    {mm(3.75),  "5",      "9"},
    {mm(4),     "6",      "8"},
    {mm(4.5),   "7",      "7"},
    {mm(5),     "8",      "6"},
    {mm(5.5),   "9",      "5"},
    {mm(6),     "10",     "4"},
    {mm(6.5),   "10 1/2", "3"},
    {mm(8),     "11",     "0"},
    {mm(9),     "13",     "00"},
    {mm(10),    "15",     "000"},
    {mm(12.75), "17",     ""},
}};
// clang-format on

// Two sizes on the chart are never nearer than 0.25 mm, so a match is never in doubt; this forgives
// a size typed or converted with two decimals.
constexpr double kSameNeedleMm = 0.01;

// Common practice, no source.
constexpr std::array<CircularLength, 6> kCircularLengths = {
    {{mm(400), 16}, {mm(600), 24}, {mm(800), 32}, {mm(1000), 40}, {mm(1200), 47}, {mm(1500), 60}}};

}  // namespace

const std::array<NeedleName, 18>& named_needles() {
  return kNeedles;
}

NeedleName name_needle(Length diameter) {
  for (const NeedleName& needle : kNeedles) {
    const double apart = std::abs((needle.diameter - diameter).mm());
    if (at_least(kSameNeedleMm, apart)) return {diameter, needle.us, needle.uk};
  }
  return {diameter, "", ""};
}

NeedleName next_named_needle(Length at_least) {
  for (const NeedleName& needle : kNeedles) {
    if (needle.diameter.mm() > at_least.mm() - kSameNeedleMm) return needle;
  }
  return {at_least, "", ""};
}

std::optional<NeedleName> thinner_needle(Length diameter) {
  std::optional<NeedleName> thinner;
  for (const NeedleName& needle : kNeedles) {
    if (needle.diameter.mm() < diameter.mm() - kSameNeedleMm) thinner = needle;
  }
  return thinner;
}

std::optional<NeedleName> thicker_needle(Length diameter) {
  for (const NeedleName& needle : kNeedles) {
    if (needle.diameter.mm() > diameter.mm() + kSameNeedleMm) return needle;
  }
  return std::nullopt;
}

const std::array<CircularLength, 6>& circular_lengths() {
  return kCircularLengths;
}

std::optional<Length> next_cable_sold(Length wanted) {
  for (const CircularLength& sold : kCircularLengths) {
    if (at_least(sold.length.mm(), wanted.mm())) return sold.length;
  }
  return std::nullopt;
}

}  // namespace twinround

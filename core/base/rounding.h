// The only place where a real number becomes a count. Every rule has a name; comparisons that
// decide a count treat differences under 1e-9 as ties, so that native and WebAssembly builds, whose
// libm may differ in the last bit, always agree.
#pragma once

namespace twinround {

// Two reals closer than this are equal where a count hangs on it.
inline constexpr double kTie = 1e-9;

enum class Tie { down, up };

// a > b, a >= b, a < b by more (or not less) than a tie.
bool clearly_above(double a, double b);
bool at_least(double a, double b);

// The nearest whole number, half up (2.5 -> 3). Saturates at +-1e9; NaN gives 0.
int round_half_up(double x);

// The largest whole number not above x; x within a tie of the next one counts as that one.
int floor_count(double x);

// The smallest whole number not below x; x within a tie of the one before counts as that one.
int ceil_count(double x);

// The number nearest to x of the form offset + m x step (m any integer). 1 <= step <= 1e6;
// saturates as above.
int nearest_on_lattice(double x, int step, int offset, Tie tie);

// The multiple of step nearest to x.
int nearest_multiple(double x, int step, Tie tie);

}  // namespace twinround

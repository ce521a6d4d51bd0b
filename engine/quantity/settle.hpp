// Taking the dust of binary arithmetic off a worked-out value.
#pragma once

#include <cmath>

namespace heelrule {

/// `value` to the nearest billionth of its stored unit, so that 264.4 − 254.4 is 10 as it is on
/// paper and meets a cut point at 10. Beyond ±2·10^6, where only times in seconds go (a month is
/// 2.6 million), a double holds no billionths: there it is the nearest hundred-thousandth, and
/// beyond ±2·10^10 the value itself. Not a number stays not a number. Chosen by us: both lie far
/// below any reading and far above the rounding of a few operations.
inline double settled(double value) {
  // Adding 1.5·2^52 leaves no bits for a fraction; taking it away again gives the nearest whole
  // number. It vectorises, which a call of `std::nearbyint` does not on every target; so does
  // working out both before one is chosen.
  constexpr double whole = 6755399441055744.0;
  const double fine = ((value * 1e9 + whole) - whole) / 1e9;
  const double coarse = ((value * 1e5 + whole) - whole) / 1e5;
  const double size = std::fabs(value);
  return size < 2e6 ? fine : size < 2e10 ? coarse : value;
}

}  // namespace heelrule

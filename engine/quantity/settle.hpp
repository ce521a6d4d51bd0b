// Taking the dust of binary arithmetic off a worked-out value.
#pragma once

namespace heelrule {

/// `value` to the nearest billionth of its stored unit, so that 264.4 − 254.4 is 10 as it is on
/// paper and meets a cut point at 10. Beyond ±2·10^6, where only times in seconds go (a month is
/// 2.6 million), a double holds no billionths: there it is the nearest hundred-thousandth, and
/// beyond ±2·10^10 the value itself. Not a number stays not a number. Chosen by us: both lie far
/// below any reading and far above the rounding of a few operations.
inline double settled(double value) {
  // Adding 1.5·2^52 leaves no bits for a fraction; taking it away again gives the nearest whole
  // number. It vectorises, which a call of `std::nearbyint` does not on every target.
  constexpr double whole = 6755399441055744.0;
  const double scale = value < 2e6 && value > -2e6 ? 1e9 : 1e5;
  const double steps = value * scale;
  const double rounded = ((steps + whole) - whole) / scale;
  return (steps < 2e15 && steps > -2e15) ? rounded : value;
}

}  // namespace heelrule

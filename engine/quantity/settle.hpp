// Taking the dust of binary arithmetic off a worked-out value.
#pragma once

namespace heelrule {

/// `value` to the nearest billionth of its stored unit, so that 255.3 − 245.3 is 10 as it is on
/// paper and meets a cut point at 10. Values beyond ±2·10^6 are left as they are: there a double
/// has few digits more. Not a number stays not a number. Chosen by us: a billionth of a millimetre
/// lies far below any reading and far above the rounding of a few operations.
inline double settled(double value) {
  // Adding 1.5·2^52 leaves no bits for a fraction; taking it away again gives the nearest whole
  // number. It vectorises, which a call of `std::nearbyint` does not on every target.
  constexpr double whole = 6755399441055744.0;
  const double steps = value * 1e9;
  const double rounded = ((steps + whole) - whole) / 1e9;
  return (steps < 2e15 && steps > -2e15) ? rounded : value;
}

}  // namespace heelrule

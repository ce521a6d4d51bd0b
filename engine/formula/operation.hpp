// What each step of a formula does to its values: the one place where it is said.
#pragma once

#include <cmath>
#include <cstdint>
#include <limits>
#include <numbers>

#include "engine/quantity/settle.hpp"

namespace heelrule {

/// The steps of a formula. Yes is 1, no is 0, a level is its index, and *not seen* is not-a-number,
/// which arithmetic carries along by itself.
enum class Operation : std::uint8_t {
  constant,
  input,
  left,   ///< its operand as it is on the left side
  right,  ///< its operand as it is on the right side
  negate,
  absolute,
  tangent,     ///< of degrees
  arctangent,  ///< in degrees
  logical_not,
  settle,  ///< to the nearest billionth, see quantity/settle.hpp
  add,
  subtract,
  multiply,
  divide,
  minimum,
  maximum,
  less,
  at_most,
  equal,
  logical_and,
  logical_or,
  choose,
};

namespace operation {

constexpr double not_seen = std::numeric_limits<double>::quiet_NaN();

inline bool is_seen(double value) { return value == value; }

/// A result that is no finite number (a division by zero, a tangent of 90°) counts as not seen.
inline double finite(double value) { return value - value == 0 ? value : not_seen; }

inline double truth(bool value) { return value ? 1.0 : 0.0; }

inline double add(double a, double b) { return a + b; }
inline double subtract(double a, double b) { return a - b; }
inline double multiply(double a, double b) { return a * b; }
/// What is 0 on paper is no divisor, whatever dust binary arithmetic left on it.
inline double divide(double a, double b) { return settled(b) == 0 ? not_seen : finite(a / b); }

/// The smaller of two seen values; not seen if either is.
inline double minimum(double a, double b) { return a + b != a + b ? not_seen : (b < a ? b : a); }
inline double maximum(double a, double b) { return a + b != a + b ? not_seen : (a < b ? b : a); }

/// Values are compared settled, so that 264.4 − 254.4 is at least 10 as it is on paper.
inline double less(double a, double b) {
  return a + b != a + b ? not_seen : truth(settled(a) < settled(b));
}
inline double at_most(double a, double b) {
  return a + b != a + b ? not_seen : truth(settled(a) <= settled(b));
}
inline double equal(double a, double b) {
  return a + b != a + b ? not_seen : truth(settled(a) == settled(b));
}

/// Three-valued logic (Kleene): what can still be decided is decided.
inline double logical_and(double a, double b) {
  return (a == 0 || b == 0) ? 0.0 : (is_seen(a) && is_seen(b) ? 1.0 : not_seen);
}
inline double logical_or(double a, double b) {
  return (a == 1 || b == 1) ? 1.0 : (is_seen(a) && is_seen(b) ? 0.0 : not_seen);
}
inline double logical_not(double a) { return 1.0 - a; }

/// `if condition then a else b`; without a condition it is decided only where both ways lead to the
/// same value.
inline double choose(double condition, double a, double b) {
  return condition == 1 ? a : (condition == 0 || settled(a) == settled(b) ? b : not_seen);
}

inline double negate(double a) { return -a; }
inline double absolute(double a) { return std::fabs(a); }

constexpr double degrees_per_radian = 180 / std::numbers::pi;
/// The tangent of 90° and its like has no value.
inline double tangent(double degrees) {
  return std::fabs(std::remainder(settled(degrees), 180)) == 90
             ? not_seen
             : finite(std::tan(degrees / degrees_per_radian));
}
inline double arctangent(double ratio) { return std::atan(ratio) * degrees_per_radian; }

}  // namespace operation
}  // namespace heelrule

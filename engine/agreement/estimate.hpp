// A figure that was worked out from a sample, and how far it can be trusted.
#pragma once

#include <cmath>
#include <cstdint>
#include <limits>

#include "engine/agreement/distribution.hpp"

namespace heelrule {

/// What cannot be worked out, and a rating that was not made.
constexpr double unknown = std::numeric_limits<double>::quiet_NaN();

/// From `low` to `high`; both unknown where there is no interval.
struct Interval {
  double low = unknown;
  double high = unknown;

  bool is_known() const { return !std::isnan(low) && !std::isnan(high); }
};

/// How an interval was made.
enum class IntervalBy : std::uint8_t {
  none,
  normal,       ///< the value ± 1.96 standard errors
  student,      ///< the value ± as many standard errors as Student's t asks for
  f,            ///< from the F distribution of a ratio of mean squares
  chi_squared,  ///< from the distribution of a variance
  score,        ///< Wilson's: the shares that the sample would not be unusual for
  resampling,   ///< from subjects drawn again and again with putting back
};

/// A figure with its standard error and the interval that holds the true one 19 times in 20.
struct Estimate {
  double value = unknown;
  double standard_error = unknown;
  Interval interval;
  IntervalBy by = IntervalBy::none;

  bool is_known() const { return !std::isnan(value); }
};

/// `value` ± `factor` · `standard_error`, cut at `least` and `most`, or at the value itself where
/// that lies beyond (with ratings missing, a coefficient may lie below −1).
inline Interval around(double value, double factor, double standard_error, double least,
                       double most) {
  if (std::isnan(value) || std::isnan(standard_error)) {
    return {};
  }
  return {std::fmax(std::fmin(least, value), value - factor * standard_error),
          std::fmin(std::fmax(most, value), value + factor * standard_error)};
}

/// The estimate with the interval that Student's t gives it, within `least` and `most`. Without one
/// where the standard error is 0: ratings that never differ do not show how far they could.
inline Estimate student_estimate(double value, double standard_error, double freedom, double least,
                                 double most) {
  if (!(freedom >= 1) || !(standard_error > 0)) {
    return {value, standard_error, {}, IntervalBy::none};
  }
  return {value, standard_error,
          around(value, student_quantile(upper_tail, freedom), standard_error, least, most),
          IntervalBy::student};
}

}  // namespace heelrule

// Quantiles and shares of the distributions that intervals are made of; the one place that knows
// the library which works them out.
#pragma once

namespace heelrule {

/// Every interval of this floor is to hold the true value 19 times in 20.
constexpr double confidence = 0.95;

/// The upper end of an interval cuts off half of what is left over.
constexpr double upper_tail = 0.5 + confidence / 2;

/// The value that a share `p` (0..1, ends excluded) of the distribution lies below. `freedom` is a
/// number of degrees of freedom, above 0, and may be a fraction. Not-a-number outside of these.
///
///     normal_quantile(0.975)      ->  1.959964
///     student_quantile(0.975, 4)  ->  2.776445
double normal_quantile(double p);
double student_quantile(double p, double freedom);
double chi_squared_quantile(double p, double freedom);
double f_quantile(double p, double above_freedom, double below_freedom);

/// The quantile of the beta distribution; its two parameters are above 0.
double beta_quantile(double p, double first, double second);

/// The share of the distribution above `value`.
///
///     student_share_above(2.776445, 4)  ->  0.025
double normal_share_above(double value);
double student_share_above(double value, double freedom);
double f_share_above(double value, double above_freedom, double below_freedom);

}  // namespace heelrule

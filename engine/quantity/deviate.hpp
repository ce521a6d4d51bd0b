// From a fraction to the standard normal value that so large a share lies below.
#pragma once

namespace heelrule {

/// The quantile of the standard normal distribution. `fraction` lies strictly between 0 and 1; the
/// result has no unit. About 16 digits, and the same to the last bit on every machine: only sums,
/// products, quotients and square roots are used, which IEEE 754 rounds in one way. Algorithm AS
/// 241 (PPND16) of Wichura, Applied Statistics 37 (1988), 477 to 484; coefficients from memory,
/// held against another library in the tests.
///
///     normal_deviate(0.975)  ->  1.959963984540054
double normal_deviate(double fraction);

}  // namespace heelrule

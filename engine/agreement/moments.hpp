// How several numbers lie: their mean, and the squares about it.
#pragma once

#include <span>

#include "engine/agreement/estimate.hpp"

namespace heelrule {

struct Moments {
  double count = 0;  ///< how many numbers
  double mean = 0;
  double squares = 0;  ///< Σ (x − mean)², in the square of the numbers' unit

  double freedom() const { return count - 1; }

  /// The standard deviation of one number; unknown of fewer than two.
  double deviation() const { return freedom() > 0 ? std::sqrt(squares / freedom()) : unknown; }
};

/// The moments of these numbers, none of which is unknown.
///
///     2, 4, 9  ->  mean 5, squares 26, deviation 3.606
Moments moments_of(std::span<const double> numbers);

}  // namespace heelrule

// How the credits of two sides become one.
#pragma once

#include <algorithm>

#include "engine/formula/operation.hpp"

namespace heelrule {

/// The side with less credit counts. One that earns nothing decides alone, since the other cannot
/// be worse; else it is *not seen* until both are seen.
inline double worse_of(double a, double b) {
  const double both = a + b == a + b ? std::min(a, b) : operation::not_seen;
  return a == 0 || b == 0 ? 0.0 : both;
}

/// The mean of both; *not seen* if either is.
inline double mean_of(double a, double b) { return (a + b) / 2; }

}  // namespace heelrule

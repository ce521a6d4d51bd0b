// A pass mark read off the line of marks over ratings.
#pragma once

#include <span>

#include "engine/agreement/estimate.hpp"

namespace heelrule {

/// A student's rating as a number, the worst being 1, and the mark.
struct RatedMark {
  double rating = 0;
  double mark = 0;
};

/// The least-squares line, and what it reads at the border.
struct BorderlineRegression {
  double students = 0;
  double slope = unknown;      ///< marks for a step of the rating
  double at_zero = unknown;    ///< the mark at rating 0
  double explained = unknown;  ///< R²
  double deviation = unknown;  ///< of marks about the line, n − 2 degrees of freedom
  Estimate cut;                ///< the pass mark; its standard error is that of the line
};

/// The borderline regression method (Wood, Humphrey-Murto and Norman 2006, Adv Health Sci Educ
/// 11:115-122; from memory). Unknown with fewer than three students or where all have one rating.
BorderlineRegression borderline_regression(std::span<const RatedMark> marks, double border);

}  // namespace heelrule

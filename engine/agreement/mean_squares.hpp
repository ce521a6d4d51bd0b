// The spread of ratings, taken apart: between subjects, between observers, and what is left.
#pragma once

#include "engine/agreement/ratings.hpp"

namespace heelrule {

/// Mean squares of a table in which every observer rated every subject, as textbooks on the
/// analysis of variance have them.
struct MeanSquares {
  double subjects = 0;   ///< how many
  double observers = 0;  ///< how many
  double between_subjects = unknown;
  double within_subjects = unknown;    ///< one-way: all that is not between subjects
  double between_observers = unknown;  ///< two-way
  double residual = unknown;           ///< two-way: what neither subject nor observer explains
  double mean = unknown;               ///< of all ratings

  bool is_known() const { return !std::isnan(residual); }
  double subject_freedom() const { return subjects - 1; }
  double within_freedom() const { return subjects * (observers - 1); }
  double residual_freedom() const { return (subjects - 1) * (observers - 1); }
};

/// Of the subjects that everybody rated. Unknown where these, or the observers, are fewer than two.
MeanSquares mean_squares(const Ratings& ratings);

}  // namespace heelrule

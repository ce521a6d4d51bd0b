// How far the parts of a mark measure one thing.
#pragma once

#include <vector>

#include "engine/agreement/ratings.hpp"

namespace heelrule {

/// Cronbach's alpha (1951, Psychometrika 16:297-334) of items that are summed; observers stand for
/// items. Of the subjects with all items.
struct InternalConsistency {
  double alpha = unknown;
  double standardised_alpha = unknown;  ///< from the mean correlation of the items
  std::vector<double> item_variances;
  double total_variance = unknown;
  double total_error = unknown;  ///< standard error of measurement of the sum, s · √(1 − alpha)
  std::vector<double> alpha_without;  ///< each item in turn; unknown where one item would remain
};

/// Unknown where there are fewer than two subjects or items, or no spread.
InternalConsistency internal_consistency(const Ratings& items);

/// From variances alone: k / (k − 1) · (1 − Σ item variances / total variance).
double cronbach_alpha(double items, double sum_of_item_variances, double total_variance);

}  // namespace heelrule

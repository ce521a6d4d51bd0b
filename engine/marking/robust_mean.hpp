// The mean of a panel's readings, which one far-off reading does not carry away.
#pragma once

#include <vector>

namespace heelrule {

struct RobustMean {
  double mean = 0;
  double deviation = 0;  ///< robust standard deviation of one reading; 0 of a single one
};

/// Algorithm A of ISO 13528:2015, annex C.3.1 (from memory; it is Huber's "proposal 2" with
/// c = 1.5). It begins with the median and 1.483 times the median distance from it. Readings
/// further than 1.5 deviations from the mean are moved in to there; the mean is then that of the
/// moved readings, and the deviation 1.134 times theirs; and so on until nothing moves any more.
/// Where more than half of the readings are alike they are the mean, with a deviation of 0.
/// Precondition: `readings` is not empty, and all are finite.
///
///     4.5, 4.9, 5.6, 4.2, 6.2, 5.2, 9.9  ->  mean 5.386, deviation 1.146
RobustMean robust_mean(const std::vector<double>& readings);

}  // namespace heelrule

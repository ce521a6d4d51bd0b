// How fast one child's feet grow, from two or more dated measurings.
#pragma once

#include <optional>
#include <span>

#include "engine/fitting/visit.hpp"

namespace heelrule {

/// A child's own rate, by a weighted line through its lengths.
struct OwnGrowth {
  double a_month = 0;     ///< mm
  double doubt = 0;       ///< standard uncertainty, mm a month
  double covariance = 0;  ///< of the rate with the latest length: an over-read length seems to
                          ///< grow fast as well, in mm²/month
  std::size_t visits = 0;
  double months = 0;       ///< from the first to the last
  bool both_feet = false;  ///< of the mean of both feet, or of one
  bool scatters = false;   ///< the lengths lie farther from the line than their doubt explains, and
                           ///< the doubts have been widened to match
};

/// Precondition: the visits have dates, each another one, earliest first. Uses the mean of both
/// feet where every visit has both, else the one that every visit has. Nothing for a single visit,
/// or where no foot was measured each time, or a length is said to be free of doubt.
///
/// Where three or more lengths scatter more than their doubts allow (chi-squared above its number
/// of degrees of freedom), doubts are widened by the root of the ratio, as is usual in weighted
/// means (Birge ratio).
std::optional<OwnGrowth> own_growth(std::span<const Visit> visits);

}  // namespace heelrule

#include "engine/scoring/program.hpp"

#include <algorithm>
#include <cmath>

namespace heelrule {

std::size_t CreditScale::band(double value) const {
  const auto above = std::upper_bound(thresholds.begin(), thresholds.end(), value);
  return static_cast<std::size_t>(above - thresholds.begin());
}

double CreditScale::credit(double value) const {
  const std::size_t at = band(value);
  const Credit& credit = credits[at];
  if (!credit.is_ramp()) {
    return credit.from;
  }
  const double low = thresholds[at - 1];
  const double slope = (credit.to - credit.from) / (thresholds[at] - low);
  return std::floor(credit.from + slope * (value - low) + 0.5);
}

}  // namespace heelrule

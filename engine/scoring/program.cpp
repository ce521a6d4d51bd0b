#include "engine/scoring/program.hpp"

#include <algorithm>
#include <cmath>

#include "engine/quantity/settle.hpp"

namespace heelrule {

double CreditScale::credit(double value) const {
  const std::size_t at = band(value);
  const Credit& credit = credits[at];
  if (!credit.is_ramp()) {
    return credit.from;
  }
  // Settled, a threshold just above a cut point is that cut point again.
  const double low = settled(thresholds[at - 1]);
  const double high = settled(thresholds[at]);
  const double exact = credit.from + (credit.to - credit.from) * (value - low) / (high - low);
  return std::floor(settled(exact) + 0.5);
}

}  // namespace heelrule

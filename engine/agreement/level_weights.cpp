#include "engine/agreement/level_weights.hpp"

#include <cmath>
#include <numeric>

namespace heelrule {
namespace {

// Of two levels that are a share `apart` of the scale away from each other.
double weight(double apart, Weighting weighting) {
  switch (weighting) {
    case Weighting::unweighted:
      return apart == 0 ? 1 : 0;
    case Weighting::linear:
      return 1 - apart;
    case Weighting::quadratic:
      return 1 - apart * apart;
  }
  return 0;
}

}  // namespace

LevelWeights::LevelWeights(std::size_t levels, Weighting weighting) : levels_(levels) {
  const double whole = levels > 1 ? static_cast<double>(levels - 1) : 1;
  for (std::size_t one = 0; one < levels; ++one) {
    for (std::size_t other = 0; other < levels; ++other) {
      const double steps = std::fabs(static_cast<double>(one) - static_cast<double>(other));
      table_.push_back(weight(steps / whole, weighting));
    }
  }
}

double LevelWeights::sum() const { return std::accumulate(table_.begin(), table_.end(), 0.0); }

}  // namespace heelrule

#include "engine/agreement/percent_agreement.hpp"

namespace heelrule {

ChanceCorrected percent_agreement(const LevelCounts& counts, const LevelWeights& weights) {
  const std::vector<double> nothing(counts.subjects(), 0);
  ChanceCorrected result = chance_corrected(counts, weights, 0, nothing);
  if (result.estimate.interval.is_known()) {
    result.estimate.interval.low = std::fmax(result.estimate.interval.low, 0);
  }
  return result;
}

ChanceCorrected free_margin_kappa(const LevelCounts& counts, const LevelWeights& weights) {
  const auto levels = static_cast<double>(counts.levels());
  const double expected = weights.sum() / (levels * levels);
  const std::vector<double> of_subjects(counts.subjects(), expected);
  return chance_corrected(counts, weights, expected, of_subjects);
}

}  // namespace heelrule

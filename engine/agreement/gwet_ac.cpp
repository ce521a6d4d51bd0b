#include "engine/agreement/gwet_ac.hpp"

namespace heelrule {

ChanceCorrected gwet_ac(const LevelCounts& counts, const LevelWeights& weights) {
  const auto levels = static_cast<double>(counts.levels());
  if (counts.levels() < 2) {
    return {};
  }
  const std::vector<double> shares = mean_shares(counts);
  const double factor = weights.sum() / (levels * (levels - 1));
  double expected = 0;
  for (const double share : shares) {
    expected += factor * share * (1 - share);
  }
  std::vector<double> of_subjects;
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    double own = 0;
    for (std::size_t level = 0; level < counts.levels(); ++level) {
      own += counts.at(subject, level) * (1 - shares[level]);
    }
    of_subjects.push_back(factor * own / counts.of_subject(subject));
  }
  return chance_corrected(counts, weights, expected, of_subjects);
}

}  // namespace heelrule

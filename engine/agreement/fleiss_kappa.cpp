#include "engine/agreement/fleiss_kappa.hpp"

namespace heelrule {
namespace {

std::vector<double> expected_of_subjects(const LevelCounts& counts, const LevelWeights& weights,
                                         const std::vector<double>& shares) {
  std::vector<double> met;
  for (std::size_t one = 0; one < shares.size(); ++one) {
    double sum = 0;
    for (std::size_t other = 0; other < shares.size(); ++other) {
      sum += weights.at(one, other) * shares[other];
    }
    met.push_back(sum);
  }
  std::vector<double> result;
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    double own = 0;
    for (std::size_t level = 0; level < shares.size(); ++level) {
      own += counts.at(subject, level) * met[level];
    }
    result.push_back(own / counts.of_subject(subject));
  }
  return result;
}

// The number of ratings that every subject has; 0 where they differ.
double common_ratings(const LevelCounts& counts) {
  const double first = counts.subjects() > 0 ? counts.of_subject(0) : 0;
  for (std::size_t subject = 1; subject < counts.subjects(); ++subject) {
    if (counts.of_subject(subject) != first) {
      return 0;
    }
  }
  return first;
}

double null_error(const std::vector<double>& shares, double subjects, double ratings) {
  double even = 0;  // Σ p (1 − p)
  double skew = 0;  // Σ p (1 − p) (1 − 2 p)
  for (const double share : shares) {
    even += share * (1 - share);
    skew += share * (1 - share) * (1 - 2 * share);
  }
  return std::sqrt(2 * (even * even - skew)) /
         (even * std::sqrt(subjects * ratings * (ratings - 1)));
}

double level_kappa(const LevelCounts& counts, std::size_t level, double share, double ratings) {
  double mixed = 0;
  for (std::size_t subject = 0; subject < counts.subjects(); ++subject) {
    const double count = counts.at(subject, level);
    mixed += count * (ratings - count);
  }
  const double expected =
      static_cast<double>(counts.subjects()) * ratings * (ratings - 1) * share * (1 - share);
  return expected > 0 ? 1 - mixed / expected : unknown;
}

}  // namespace

FleissKappa fleiss_kappa(const LevelCounts& counts, const LevelWeights& weights) {
  const std::vector<double> shares = mean_shares(counts);
  FleissKappa result;
  result.kappa = chance_corrected(counts, weights, drawn_agreement(shares, weights),
                                  expected_of_subjects(counts, weights, shares));
  const double ratings = common_ratings(counts);
  if (ratings < 2 || !result.kappa.is_known()) {
    result.level_kappas.assign(counts.levels(), unknown);
    return result;
  }
  result.null_error = null_error(shares, static_cast<double>(counts.subjects()), ratings);
  result.z = result.kappa.estimate.value / result.null_error;
  for (std::size_t level = 0; level < counts.levels(); ++level) {
    result.level_kappas.push_back(level_kappa(counts, level, shares[level], ratings));
  }
  return result;
}

}  // namespace heelrule

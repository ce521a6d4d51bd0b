// Agreement of any number of observers, chance taken off.
#pragma once

#include <span>
#include <vector>

#include "engine/agreement/estimate.hpp"
#include "engine/agreement/level_counts.hpp"

namespace heelrule {

/// A coefficient (observed − expected) / (1 − expected) and its parts. The value is unknown where
/// no subject has two ratings, or where chance alone would agree always.
struct ChanceCorrected {
  Estimate estimate;
  double observed = unknown;  ///< share of pairs that agree, the mean over subjects
  double expected = unknown;  ///< the share that would agree by chance

  bool is_known() const { return estimate.is_known(); }
};

/// The coefficient for agreement that is `expected` by chance. `expected_of` is, for each subject,
/// what its own ratings make of the chance: the expected agreement is half the sum of how it
/// changes with them.
///
/// The standard error is linearised and divides by n (n − 1), n being the subjects with a rating
/// (Gwet 2008, Br J Math Stat Psychol 61:29-48, and Handbook of Inter-Rater Reliability, 4th
/// edition; formulas from memory, checked against published results). The interval uses Student's t
/// with n − 1 degrees of freedom. Subjects with a single rating count for chance, and not for the
/// agreement.
ChanceCorrected chance_corrected(const LevelCounts& counts, const LevelWeights& weights,
                                 double expected, std::span<const double> expected_of);

/// The mean share of each level, each subject counting once, whatever the number of its ratings.
std::vector<double> mean_shares(const LevelCounts& counts);

/// The weighted agreement of two ratings drawn by these shares.
double drawn_agreement(std::span<const double> shares, const LevelWeights& weights);

}  // namespace heelrule

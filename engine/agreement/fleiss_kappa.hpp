// Fleiss's kappa, of any number of observers who need not be the same for each subject.
#pragma once

#include <vector>

#include "engine/agreement/chance_corrected.hpp"

namespace heelrule {

/// The coefficient, and how it does against chance and level by level.
struct FleissKappa {
  ChanceCorrected kappa;
  double null_error = unknown;       ///< standard error if there were no agreement beyond chance
  double z = unknown;                ///< kappa in units of it
  std::vector<double> level_kappas;  ///< of each level against all others; unknown where not used
};

/// Chance is what two ratings drawn at random from all would agree by. The interval is linearised
/// (see `chance_corrected`); the test against chance is that of Fleiss, Nee and Landis 1979
/// (Psychol Bull 86:974-977), unweighted, and is unknown unless all subjects have as many ratings.
/// Source of the coefficient: Fleiss 1971 (Psychol Bull 76:378-382).
FleissKappa fleiss_kappa(const LevelCounts& counts, const LevelWeights& weights);

}  // namespace heelrule

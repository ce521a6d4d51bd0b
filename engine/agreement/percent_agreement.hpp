// Agreement as it is counted, with nothing taken off for chance.
#pragma once

#include "engine/agreement/chance_corrected.hpp"

namespace heelrule {

/// The share of pairs of ratings of the same subject that agree, near misses counting by
/// `weights`: the mean over the subjects that have a pair. From 0 to 1.
ChanceCorrected percent_agreement(const LevelCounts& counts, const LevelWeights& weights);

/// The same with the agreement taken off that observers would reach who choose every level as often
/// as every other: S of Bennett, Alpert and Goldstein (1954), kappa with free margins of Brennan
/// and Prediger (1981) and of Randolph (2005), PABAK where there are two levels.
ChanceCorrected free_margin_kappa(const LevelCounts& counts, const LevelWeights& weights);

}  // namespace heelrule

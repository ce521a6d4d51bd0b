// Gwet's coefficients of agreement.
#pragma once

#include "engine/agreement/chance_corrected.hpp"

namespace heelrule {

/// AC1 (unweighted) or AC2 (weighted): the agreement that chance would give is worked out from how
/// evenly the levels are used, so that it stays small where one level is rare.
///
///     expected = T / (q (q − 1)) · Σ p (1 − p),  T the sum of all weights, q the levels declared
///
/// Source: Gwet 2008 (Br J Math Stat Psychol 61:29-48). One declared level: unknown.
ChanceCorrected gwet_ac(const LevelCounts& counts, const LevelWeights& weights);

}  // namespace heelrule

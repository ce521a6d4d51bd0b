// Cohen's kappa of more than two observers: the mean of all pairs.
#pragma once

#include "engine/agreement/cohen_kappa.hpp"

namespace heelrule {

/// The mean over the pairs of observers whose kappa is known (Light 1971, Psychol Bull 76:365-377).
/// The standard error is found by leaving each subject out in turn (jackknife: Tukey 1958), the
/// interval with Student's t and one degree of freedom less than subjects with a pair. `observed`
/// and `expected` are means, too. Of two observers the value is `cohen_kappa`'s.
ChanceCorrected mean_cohen_kappa(const Ratings& ratings, const LevelWeights& weights);

}  // namespace heelrule

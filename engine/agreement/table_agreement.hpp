// Everything that is worked out from a plain table of ratings.
#pragma once

#include <optional>
#include <vector>

#include "engine/agreement/coefficient.hpp"
#include "engine/agreement/internal_consistency.hpp"
#include "engine/agreement/limits_of_agreement.hpp"
#include "engine/agreement/measurement_error.hpp"
#include "engine/agreement/remark.hpp"

namespace heelrule {

/// How one level was used.
struct LevelUse {
  double count = 0;
  double share = 0;        ///< mean over subjects
  double kappa = unknown;  ///< Fleiss's, this level against all others
};

/// Two observers beside each other.
struct PairAgreement {
  std::size_t first = 0;
  std::size_t second = 0;
  double subjects = 0;                    ///< which both rated
  std::optional<CrossTable> table;        ///< where there are levels, and not too many
  std::vector<Coefficient> coefficients;  ///< Cohen's kappas
  std::vector<double> level_agreement;
  std::optional<TwoLevelIndices> two_levels;
  std::optional<LimitsOfAgreement> limits;  ///< where there are numbers
  std::optional<MeasurementError> error;
};

struct TableAgreement {
  std::vector<Coefficient> coefficients;
  std::vector<Remark> remarks;
  std::vector<LevelUse> levels;
  std::vector<double> subject_agreement;  ///< share of a subject's pairs that agree; of levels
  std::vector<PairAgreement> pairs;
  std::optional<MeanSquares> squares;  ///< where there are numbers, and two rated by everybody
  std::optional<MeasurementError> error;
  std::optional<InternalConsistency> consistency;
};

/// All figures of a table: coefficients and remarks; of levels how each was used, and where
/// subjects and pairs of observers agree; of numbers their spread and the error of measurement. A
/// figure that the ratings are too few for is unknown, and a part that is of another kind of rating
/// is left out.
TableAgreement table_agreement(const ScaledRatings& ratings);

}  // namespace heelrule

// All coefficients that apply to a table of ratings.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/agreement/chance_corrected.hpp"
#include "engine/agreement/cohen_kappa.hpp"
#include "engine/agreement/krippendorff_alpha.hpp"
#include "engine/agreement/scaled_ratings.hpp"

namespace heelrule {

enum class CoefficientName : std::uint8_t {
  percent_agreement,
  free_margin_kappa,
  cohen_kappa,
  mean_cohen_kappa,
  fleiss_kappa,
  gwet_ac1,
  gwet_ac2,
  krippendorff_alpha,
  icc_1_1,
  icc_2_1,
  icc_3_1,
  icc_1_k,
  icc_2_k,
  icc_3_k,
};

struct Coefficient {
  CoefficientName name = CoefficientName::percent_agreement;
  std::optional<Weighting> weighting;  ///< of those that weight near misses
  std::optional<Metric> metric;        ///< of alpha
  Estimate estimate;
  double observed = unknown;    ///< agreement that was seen, where the coefficient knows it
  double expected = unknown;    ///< and that chance would give
  double null_error = unknown;  ///< standard error if chance alone were at work
  double z = unknown;           ///< the value in units of that
};

/// Those for levels, unweighted; weighted too where the levels are a declared scale; alpha by every
/// metric that applies; the six intraclass correlations where the ratings are numbers.
std::vector<Coefficient> coefficients(const ScaledRatings& ratings);

/// Cohen's kappa of one pair of observers, weighted each way that applies.
std::vector<Coefficient> pair_coefficients(const CrossTable& table, RatingKind kind);

/// The coefficient of that name, if it is among these.
const Coefficient* find(const std::vector<Coefficient>& all, CoefficientName name,
                        std::optional<Weighting> weighting = std::nullopt,
                        std::optional<Metric> metric = std::nullopt);

}  // namespace heelrule

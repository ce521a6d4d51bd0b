#include "engine/agreement/coefficient.hpp"

#include <algorithm>
#include <array>

#include "engine/agreement/fleiss_kappa.hpp"
#include "engine/agreement/gwet_ac.hpp"
#include "engine/agreement/intraclass.hpp"
#include "engine/agreement/mean_cohen_kappa.hpp"
#include "engine/agreement/percent_agreement.hpp"

namespace heelrule {
namespace {

std::vector<Weighting> weightings(RatingKind kind) {
  if (kind == RatingKind::levels) {
    return {Weighting::unweighted, Weighting::linear, Weighting::quadratic};
  }
  return {Weighting::unweighted};
}

Coefficient corrected(CoefficientName name, Weighting weighting, const ChanceCorrected& found) {
  return {name,           weighting,      std::nullopt, found.estimate,
          found.observed, found.expected, unknown,      unknown};
}

Coefficient cohen(const CrossTable& table, Weighting weighting, const LevelWeights& weights) {
  const CohenKappa found = cohen_kappa(table, weights);
  Coefficient result = corrected(CoefficientName::cohen_kappa, weighting, found.kappa);
  result.null_error = found.null_error;
  result.z = found.z;
  return result;
}

Coefficient fleiss(const LevelCounts& counts, Weighting weighting, const LevelWeights& weights) {
  const FleissKappa found = fleiss_kappa(counts, weights);
  Coefficient result = corrected(CoefficientName::fleiss_kappa, weighting, found.kappa);
  if (weighting == Weighting::unweighted) {
    result.null_error = found.null_error;
    result.z = found.z;
  }
  return result;
}

void add_of_levels(const ScaledRatings& ratings, std::vector<Coefficient>& all) {
  const std::size_t levels = ratings.level_numbers.size();
  const LevelCounts counts = level_counts(ratings.levels, levels);
  for (const Weighting weighting : weightings(ratings.kind)) {
    const LevelWeights weights(levels, weighting);
    all.push_back(corrected(CoefficientName::percent_agreement, weighting,
                            percent_agreement(counts, weights)));
    all.push_back(corrected(CoefficientName::free_margin_kappa, weighting,
                            free_margin_kappa(counts, weights)));
    all.push_back(ratings.levels.observers() == 2
                      ? cohen(cross_table(ratings.levels, 0, 1, levels), weighting, weights)
                      : corrected(CoefficientName::mean_cohen_kappa, weighting,
                                  mean_cohen_kappa(ratings.levels, weights)));
    all.push_back(fleiss(counts, weighting, weights));
    all.push_back(corrected(
        weighting == Weighting::unweighted ? CoefficientName::gwet_ac1 : CoefficientName::gwet_ac2,
        weighting, gwet_ac(counts, weights)));
  }
}

void add_alpha(Metric metric, const KrippendorffAlpha& found, std::vector<Coefficient>& all) {
  all.push_back({CoefficientName::krippendorff_alpha, std::nullopt, metric, found.estimate, unknown,
                 unknown, unknown, unknown});
}

void add_alphas(const ScaledRatings& ratings, std::vector<Coefficient>& all) {
  std::vector<Metric> metrics{Metric::nominal};
  if (ratings.is_ordered()) {
    metrics.push_back(Metric::ordinal);
  }
  if (ratings.has_numbers() && ratings.level_numbers.front() >= 0) {
    metrics.push_back(Metric::ratio);
  }
  const LevelCounts counts = level_counts(ratings.levels, ratings.level_numbers.size());
  for (const Metric metric : metrics) {
    add_alpha(metric, krippendorff_alpha(counts, metric, ratings.level_numbers), all);
  }
}

constexpr std::array<CoefficientName, 6> intraclass_names{
    CoefficientName::icc_1_1, CoefficientName::icc_2_1, CoefficientName::icc_3_1,
    CoefficientName::icc_1_k, CoefficientName::icc_2_k, CoefficientName::icc_3_k};

}  // namespace

std::vector<Coefficient> coefficients(const ScaledRatings& ratings) {
  std::vector<Coefficient> all;
  if (ratings.has_levels()) {
    add_of_levels(ratings, all);
    add_alphas(ratings, all);
  }
  if (ratings.has_numbers()) {
    add_alpha(Metric::interval, interval_alpha(ratings.numbers), all);
    const MeanSquares squares = mean_squares(ratings.numbers);
    for (std::size_t i = 0; i < intraclass_forms.size(); ++i) {
      all.push_back({intraclass_names[i], std::nullopt, std::nullopt,
                     intraclass(squares, intraclass_forms[i]), unknown, unknown, unknown, unknown});
    }
  }
  return all;
}

std::vector<Coefficient> pair_coefficients(const CrossTable& table, RatingKind kind) {
  std::vector<Coefficient> all;
  for (const Weighting weighting : weightings(kind)) {
    all.push_back(cohen(table, weighting, LevelWeights(table.levels(), weighting)));
  }
  return all;
}

const Coefficient* find(const std::vector<Coefficient>& all, CoefficientName name,
                        std::optional<Weighting> weighting, std::optional<Metric> metric) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Coefficient& one) {
    return one.name == name && (!weighting || one.weighting == weighting) &&
           (!metric || one.metric == metric);
  });
  return found == all.end() ? nullptr : &*found;
}

}  // namespace heelrule

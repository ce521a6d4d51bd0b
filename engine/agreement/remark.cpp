#include "engine/agreement/remark.hpp"

#include <algorithm>

#include "engine/agreement/measurement_error.hpp"

namespace heelrule {
namespace {

constexpr double high_agreement = 0.8;
constexpr double low_kappa = 0.6;
constexpr double far_apart = 0.2;
constexpr double low_correlation = 0.5;
constexpr double close_measuring = 0.02;
constexpr std::size_t fewest_to_compare = 3;

void say_prevalence(const ScaledRatings& ratings, const std::vector<Coefficient>& all,
                    std::vector<Remark>& said) {
  const std::vector<double> shares =
      mean_shares(level_counts(ratings.levels, ratings.level_numbers.size()));
  const auto common = std::max_element(shares.begin(), shares.end());
  const auto level = static_cast<std::size_t>(common - shares.begin());
  if (*common > 1 - 1e-9) {
    said.emplace_back(OneLevelOnly{level});
    return;
  }
  const Coefficient* kappa = find(all, CoefficientName::fleiss_kappa, Weighting::unweighted);
  const Coefficient* ac1 = find(all, CoefficientName::gwet_ac1);
  if (kappa->observed >= high_agreement && kappa->estimate.value < low_kappa &&
      ac1->estimate.value - kappa->estimate.value >= far_apart) {
    said.emplace_back(
        Prevalence{kappa->observed, kappa->estimate.value, ac1->estimate.value, level, *common});
  }
}

// Of the means of the subjects, whoever measured them.
double deviation_of_subjects(const Ratings& numbers) {
  std::vector<double> means;
  double centre = 0;
  for (std::size_t subject = 0; subject < numbers.subjects(); ++subject) {
    double sum = 0;
    double count = 0;
    for (std::size_t observer = 0; observer < numbers.observers(); ++observer) {
      if (numbers.has(subject, observer)) {
        sum += numbers.at(subject, observer);
        count += 1;
      }
    }
    means.push_back(sum / count);
    centre += means.back();
  }
  centre /= static_cast<double>(means.size());
  double squares = 0;
  for (const double mean : means) {
    squares += (mean - centre) * (mean - centre);
  }
  return std::sqrt(squares / static_cast<double>(means.size() - 1));
}

void say_alike(const ScaledRatings& ratings, const std::vector<Coefficient>& all,
               std::vector<Remark>& said) {
  const MeasurementError error = measurement_error(ratings.numbers);
  const Coefficient* alpha =
      find(all, CoefficientName::krippendorff_alpha, std::nullopt, Metric::interval);
  const bool enough = ratings.numbers.rated_by(2).subjects() >= fewest_to_compare;
  if (enough && alpha->estimate.value < low_correlation && error.relative < close_measuring) {
    said.emplace_back(AlikeSubjects{alpha->estimate.value, error.technical.value,
                                    deviation_of_subjects(ratings.numbers.rated_by(2))});
  }
}

}  // namespace

std::vector<Remark> remarks(const ScaledRatings& ratings, const std::vector<Coefficient>& all) {
  const Ratings& known = ratings.has_levels() ? ratings.levels : ratings.numbers;
  const std::size_t paired = known.rated_by(2).subjects();
  std::vector<Remark> said;
  if (paired == 0) {
    said.emplace_back(NobodyPaired{});
    return said;
  }
  const auto subjects = static_cast<double>(paired);
  if (subjects < few_subjects) {
    said.emplace_back(FewSubjects{subjects});
  }
  if (ratings.has_levels() && ratings.kind != RatingKind::numbers) {
    say_prevalence(ratings, all, said);
  }
  if (ratings.has_numbers() && ratings.kind == RatingKind::numbers) {
    say_alike(ratings, all, said);
  }
  return said;
}

}  // namespace heelrule

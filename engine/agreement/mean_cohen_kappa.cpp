#include "engine/agreement/mean_cohen_kappa.hpp"

namespace heelrule {
namespace {

struct Mean {
  double sum = 0;
  double count = 0;

  void add(double value) {
    if (!std::isnan(value)) {
      sum += value;
      count += 1;
    }
  }
  double value() const { return count > 0 ? sum / count : unknown; }
};

// The sums behind the kappa of one pair, from which a subject can be taken out at once.
class PairSums {
 public:
  PairSums(const CrossTable& table, const LevelWeights& weights)
      : weights_(weights),
        first_met_(table.levels(), 0),
        second_met_(table.levels(), 0),
        total_(table.total()) {
    const std::vector<double> first = table.first_totals();
    const std::vector<double> second = table.second_totals();
    for (std::size_t one = 0; one < table.levels(); ++one) {
      for (std::size_t other = 0; other < table.levels(); ++other) {
        const double weight = weights.at(one, other);
        first_met_[one] += weight * second[other];
        second_met_[other] += weight * first[one];
        agreeing_ += weight * table.at(one, other);
        by_chance_ += weight * first[one] * second[other];
      }
    }
  }

  double observed() const { return total_ > 0 ? agreeing_ / total_ : unknown; }
  double expected() const { return total_ > 0 ? by_chance_ / (total_ * total_) : unknown; }
  double kappa() const { return kappa_of(agreeing_, by_chance_, total_); }

  // Without a subject that got these two levels.
  double kappa_without(std::size_t one, std::size_t other) const {
    const double weight = weights_.at(one, other);
    return kappa_of(agreeing_ - weight, by_chance_ - first_met_[one] - second_met_[other] + weight,
                    total_ - 1);
  }

 private:
  // What is left of a difference that should be 0 is taken for 0.
  static double kappa_of(double agreeing, double by_chance, double total) {
    constexpr double dust = 1e-12;
    const double expected = by_chance / (total * total);
    return total > 0 && 1 - expected > dust ? (agreeing / total - expected) / (1 - expected)
                                            : unknown;
  }

  const LevelWeights& weights_;
  std::vector<double> first_met_;   // Σ_j w_ij n_.j
  std::vector<double> second_met_;  // Σ_i w_ij n_i.
  double total_;
  double agreeing_ = 0;
  double by_chance_ = 0;
};

double jackknife_error(const std::vector<Mean>& left_out, double& subjects) {
  Mean centre;
  for (const Mean& mean : left_out) {
    centre.add(mean.value());
  }
  subjects = centre.count;
  double squares = 0;
  for (const Mean& mean : left_out) {
    const double from_centre = mean.value() - centre.value();
    squares += std::isnan(from_centre) ? 0 : from_centre * from_centre;
  }
  return std::sqrt(squares * (subjects - 1) / subjects);
}

}  // namespace

ChanceCorrected mean_cohen_kappa(const Ratings& ratings, const LevelWeights& weights) {
  const Ratings paired = ratings.rated_by(2);
  Mean kappa;
  Mean observed;
  Mean expected;
  std::vector<Mean> left_out(paired.subjects());
  for (std::size_t first = 0; first < paired.observers(); ++first) {
    for (std::size_t second = first + 1; second < paired.observers(); ++second) {
      const PairSums sums(cross_table(paired, first, second, weights.levels()), weights);
      kappa.add(sums.kappa());
      observed.add(sums.observed());
      expected.add(sums.expected());
      for (std::size_t subject = 0; subject < paired.subjects(); ++subject) {
        const bool both = paired.has(subject, first) && paired.has(subject, second);
        left_out[subject].add(
            both ? sums.kappa_without(static_cast<std::size_t>(paired.at(subject, first)),
                                      static_cast<std::size_t>(paired.at(subject, second)))
                 : sums.kappa());
      }
    }
  }
  ChanceCorrected result{
      {kappa.value(), unknown, {}, IntervalBy::none}, observed.value(), expected.value()};
  if (result.is_known() && paired.subjects() > 1) {
    double subjects = 0;
    const double error = jackknife_error(left_out, subjects);
    result.estimate = student_estimate(kappa.value(), error, subjects - 1, -1, 1);
  }
  return result;
}

}  // namespace heelrule

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

// Kappa alone, without the standard errors that nobody asks for here.
double kappa_of(const CrossTable& table, const LevelWeights& weights, double& observed,
                double& expected) {
  const double total = table.total();
  observed = unknown;
  expected = unknown;
  if (!(total > 0)) {
    return unknown;
  }
  const std::vector<double> first = table.first_totals();
  const std::vector<double> second = table.second_totals();
  observed = 0;
  expected = 0;
  for (std::size_t one = 0; one < table.levels(); ++one) {
    for (std::size_t other = 0; other < table.levels(); ++other) {
      observed += weights.at(one, other) * table.at(one, other) / total;
      expected += weights.at(one, other) * first[one] / total * second[other] / total;
    }
  }
  return expected < 1 ? (observed - expected) / (1 - expected) : unknown;
}

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
  double of_pair = 0;
  double by_chance = 0;
  for (std::size_t first = 0; first < paired.observers(); ++first) {
    for (std::size_t second = first + 1; second < paired.observers(); ++second) {
      CrossTable table = cross_table(paired, first, second, weights.levels());
      const double whole = kappa_of(table, weights, of_pair, by_chance);
      kappa.add(whole);
      observed.add(of_pair);
      expected.add(by_chance);
      for (std::size_t subject = 0; subject < paired.subjects(); ++subject) {
        if (!paired.has(subject, first) || !paired.has(subject, second)) {
          left_out[subject].add(whole);
          continue;
        }
        const auto one = static_cast<std::size_t>(paired.at(subject, first));
        const auto other = static_cast<std::size_t>(paired.at(subject, second));
        table.add(one, other, -1);
        left_out[subject].add(kappa_of(table, weights, of_pair, by_chance));
        table.add(one, other, 1);
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

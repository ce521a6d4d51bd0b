#include "engine/agreement/table_agreement.hpp"

#include <algorithm>
#include <utility>

#include "engine/agreement/fleiss_kappa.hpp"

namespace heelrule {
namespace {

void add_levels(const ScaledRatings& ratings, TableAgreement& result) {
  const std::size_t levels = ratings.level_numbers.size();
  const LevelCounts counts = level_counts(ratings.levels, levels);
  const LevelWeights weights(levels, Weighting::unweighted);
  const std::vector<double> kappas = fleiss_kappa(counts, weights).level_kappas;
  const std::vector<double> used = counts.of_levels();
  const std::vector<double> shares = mean_shares(counts);
  for (std::size_t level = 0; level < levels; ++level) {
    result.levels.push_back({used[level], shares[level], kappas[level]});
  }
  // Subjects without a rating are not among the counts, and have no agreement either.
  std::size_t row = 0;
  for (std::size_t subject = 0; subject < ratings.levels.subjects(); ++subject) {
    const bool rated = ratings.levels.rows({subject}).count() > 0;
    result.subject_agreement.push_back(rated ? pair_agreement(counts, row, weights) : unknown);
    row += rated ? 1 : 0;
  }
}

Ratings two_columns(const Ratings& ratings, std::size_t first, std::size_t second) {
  Ratings result(ratings.subjects(), 2);
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    result.set(subject, 0, ratings.at(subject, first));
    result.set(subject, 1, ratings.at(subject, second));
  }
  return result;
}

// Numbers that are mostly different from each other have no table worth showing.
constexpr std::size_t most_table_levels = 20;

PairAgreement pair_of(const ScaledRatings& ratings, std::size_t first, std::size_t second) {
  PairAgreement pair;
  pair.first = first;
  pair.second = second;
  if (ratings.has_levels()) {
    CrossTable table = cross_table(ratings.levels, first, second, ratings.level_numbers.size());
    pair.subjects = table.total();
    pair.coefficients = pair_coefficients(table, ratings.kind);
    pair.level_agreement = level_agreement(table);
    if (table.levels() == 2) {
      pair.two_levels = two_level_indices(table);
    }
    if (table.levels() <= most_table_levels) {
      pair.table = std::move(table);
    }
  }
  if (ratings.has_numbers()) {
    pair.limits = limits_of_agreement(measured_pairs(ratings.numbers, first, second));
    pair.subjects = pair.limits->subjects;
    pair.error = measurement_error(two_columns(ratings.numbers, first, second));
  }
  return pair;
}

}  // namespace

TableAgreement table_agreement(const ScaledRatings& ratings) {
  TableAgreement result;
  result.coefficients = coefficients(ratings);
  result.remarks = remarks(ratings, result.coefficients);
  if (ratings.has_levels()) {
    add_levels(ratings, result);
  }
  if (ratings.has_numbers()) {
    result.squares = mean_squares(ratings.numbers);
    result.error = measurement_error(ratings.numbers);
    result.consistency = internal_consistency(ratings.numbers);
  }
  const std::size_t observers = std::max(ratings.levels.observers(), ratings.numbers.observers());
  for (std::size_t first = 0; first < observers; ++first) {
    for (std::size_t second = first + 1; second < observers; ++second) {
      result.pairs.push_back(pair_of(ratings, first, second));
    }
  }
  return result;
}

}  // namespace heelrule

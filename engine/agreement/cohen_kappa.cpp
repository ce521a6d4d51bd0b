#include "engine/agreement/cohen_kappa.hpp"

namespace heelrule {
namespace {

// Shares of the table, and what each level meets at the other observer.
struct Shares {
  std::vector<double> first;
  std::vector<double> second;
  std::vector<double> first_met;   // Σ_j w_ij p_.j
  std::vector<double> second_met;  // Σ_i w_ij p_i.
};

Shares shares_of(const CrossTable& table, const LevelWeights& weights) {
  const std::size_t levels = table.levels();
  Shares shares{table.first_totals(), table.second_totals(), std::vector<double>(levels, 0),
                std::vector<double>(levels, 0)};
  const double total = table.total();
  for (std::size_t level = 0; level < levels; ++level) {
    shares.first[level] /= total;
    shares.second[level] /= total;
  }
  for (std::size_t one = 0; one < levels; ++one) {
    for (std::size_t other = 0; other < levels; ++other) {
      shares.first_met[one] += weights.at(one, other) * shares.second[other];
      shares.second_met[other] += weights.at(one, other) * shares.first[one];
    }
  }
  return shares;
}

struct Agreements {
  double observed = 0;
  double expected = 0;
};

Agreements agreements(const CrossTable& table, const LevelWeights& weights, const Shares& shares) {
  const double total = table.total();
  Agreements found;
  for (std::size_t one = 0; one < table.levels(); ++one) {
    found.expected += shares.first[one] * shares.first_met[one];
    for (std::size_t other = 0; other < table.levels(); ++other) {
      found.observed += weights.at(one, other) * table.at(one, other) / total;
    }
  }
  return found;
}

// The sums of squares of which the variances are made: with the observers as they are, and with
// two who meet by chance alone.
struct Spreads {
  double about_value = 0;
  double about_chance = 0;
};

Spreads spreads_of(const CrossTable& table, const LevelWeights& weights, const Shares& shares,
                   double kappa) {
  const double total = table.total();
  Spreads found;
  for (std::size_t one = 0; one < table.levels(); ++one) {
    for (std::size_t other = 0; other < table.levels(); ++other) {
      const double weight = weights.at(one, other);
      const double met = shares.first_met[one] + shares.second_met[other];
      const double moved = weight - met * (1 - kappa);
      found.about_value += table.at(one, other) / total * moved * moved;
      found.about_chance +=
          shares.first[one] * shares.second[other] * (weight - met) * (weight - met);
    }
  }
  return found;
}

// Variances come out of differences, and may fall below 0 by rounding.
double root(double variance) { return std::sqrt(std::fmax(variance, 0)); }

}  // namespace

double CrossTable::total() const {
  double sum = 0;
  for (const double count : counts_) {
    sum += count;
  }
  return sum;
}

std::vector<double> CrossTable::first_totals() const {
  std::vector<double> totals(levels_, 0);
  for (std::size_t i = 0; i < counts_.size(); ++i) {
    totals[i / levels_] += counts_[i];
  }
  return totals;
}

std::vector<double> CrossTable::second_totals() const {
  std::vector<double> totals(levels_, 0);
  for (std::size_t i = 0; i < counts_.size(); ++i) {
    totals[i % levels_] += counts_[i];
  }
  return totals;
}

CrossTable cross_table(const Ratings& ratings, std::size_t first, std::size_t second,
                       std::size_t levels) {
  CrossTable table(levels);
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    if (ratings.has(subject, first) && ratings.has(subject, second)) {
      const auto one = static_cast<std::size_t>(ratings.at(subject, first));
      const auto other = static_cast<std::size_t>(ratings.at(subject, second));
      table.add(one, other, 1.0);
    }
  }
  return table;
}

CohenKappa cohen_kappa(const CrossTable& table, const LevelWeights& weights) {
  const double total = table.total();
  CohenKappa result;
  if (!(total > 0)) {
    return result;
  }
  const Shares shares = shares_of(table, weights);
  const auto [observed, expected] = agreements(table, weights, shares);
  result.kappa.observed = observed;
  result.kappa.expected = expected;
  if (!(expected < 1)) {
    return result;
  }
  const double value = (observed - expected) / (1 - expected);
  const Spreads spreads = spreads_of(table, weights, shares, value);
  const double centre = value - expected * (1 - value);
  const double scale = (1 - expected) * std::sqrt(total);
  const double error = root(spreads.about_value - centre * centre) / scale;
  result.kappa.estimate = {value, error, {}, IntervalBy::none};
  if (error > 0) {
    result.kappa.estimate.interval = around(value, normal_quantile(upper_tail), error, -1, 1);
    result.kappa.estimate.by = IntervalBy::normal;
  }
  result.null_error = root(spreads.about_chance - expected * expected) / scale;
  result.z = result.null_error > 0 ? value / result.null_error : unknown;
  return result;
}

std::vector<double> level_agreement(const CrossTable& table) {
  const std::vector<double> first = table.first_totals();
  const std::vector<double> second = table.second_totals();
  std::vector<double> result;
  for (std::size_t level = 0; level < table.levels(); ++level) {
    const double used = first[level] + second[level];
    result.push_back(used > 0 ? 2 * table.at(level, level) / used : unknown);
  }
  return result;
}

TwoLevelIndices two_level_indices(const CrossTable& table) {
  const double total = table.total();
  if (table.levels() != 2 || !(total > 0)) {
    return {};
  }
  const double agreeing = table.at(0, 0) + table.at(1, 1);
  return {(table.at(0, 0) - table.at(1, 1)) / total, (table.at(0, 1) - table.at(1, 0)) / total,
          2 * agreeing / total - 1};
}

}  // namespace heelrule

#include "engine/agreement/limits_of_agreement.hpp"

#include "engine/agreement/moments.hpp"

namespace heelrule {
namespace {

// Sums of squares and products about the means.
struct Spread {
  double first = 0;
  double second = 0;
  double both = 0;
};

Spread spread_of(std::span<const MeasuredPair> pairs) {
  MeasuredPair mean;
  for (const MeasuredPair& pair : pairs) {
    mean.first += pair.first / static_cast<double>(pairs.size());
    mean.second += pair.second / static_cast<double>(pairs.size());
  }
  Spread spread;
  for (const MeasuredPair& pair : pairs) {
    spread.first += (pair.first - mean.first) * (pair.first - mean.first);
    spread.second += (pair.second - mean.second) * (pair.second - mean.second);
    spread.both += (pair.first - mean.first) * (pair.second - mean.second);
  }
  return spread;
}

}  // namespace

std::vector<double> differences(std::span<const MeasuredPair> pairs) {
  std::vector<double> all;
  all.reserve(pairs.size());
  for (const MeasuredPair& pair : pairs) {
    all.push_back(pair.first - pair.second);
  }
  return all;
}

LimitsOfAgreement limits_of_agreement(std::span<const MeasuredPair> pairs, double factor) {
  LimitsOfAgreement result;
  result.subjects = static_cast<double>(pairs.size());
  if (pairs.size() < 2) {
    return result;
  }
  const Moments moments = moments_of(differences(pairs));
  result.deviation = moments.deviation();
  const auto estimate = [&](double value, double error) {
    return student_estimate(value, error, moments.freedom(), -HUGE_VAL, HUGE_VAL);
  };
  const double limit_error = std::sqrt(3 / result.subjects) * result.deviation;
  result.bias = estimate(moments.mean, result.deviation / std::sqrt(result.subjects));
  result.low = estimate(moments.mean - factor * result.deviation, limit_error);
  result.high = estimate(moments.mean + factor * result.deviation, limit_error);
  const Spread spread = spread_of(pairs);
  if (spread.first > 0 && spread.second > 0) {
    result.correlation = spread.both / std::sqrt(spread.first * spread.second);
  }
  return result;
}

std::vector<MeasuredPair> measured_pairs(const Ratings& ratings, std::size_t first,
                                         std::size_t second) {
  std::vector<MeasuredPair> pairs;
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    if (ratings.has(subject, first) && ratings.has(subject, second)) {
      pairs.push_back({ratings.at(subject, first), ratings.at(subject, second)});
    }
  }
  return pairs;
}

std::vector<MeasuredPair> pairs_with_others(const Ratings& ratings, std::size_t observer) {
  std::vector<MeasuredPair> pairs;
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    if (!ratings.has(subject, observer)) {
      continue;
    }
    double sum = 0;
    double count = 0;
    for (std::size_t other = 0; other < ratings.observers(); ++other) {
      if (other != observer && ratings.has(subject, other)) {
        sum += ratings.at(subject, other);
        count += 1;
      }
    }
    if (count > 0) {
      pairs.push_back({ratings.at(subject, observer), sum / count});
    }
  }
  return pairs;
}

double single_reading_deviation(double deviation_of_means, double first_own, double second_own) {
  return std::sqrt(deviation_of_means * deviation_of_means + first_own * first_own / 4 +
                   second_own * second_own / 4);
}

}  // namespace heelrule

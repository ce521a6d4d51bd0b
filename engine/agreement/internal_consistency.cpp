#include "engine/agreement/internal_consistency.hpp"

namespace heelrule {
namespace {

using Table = std::vector<std::vector<double>>;

Table covariances(const Ratings& items) {
  const std::size_t count = items.observers();
  const auto subjects = static_cast<double>(items.subjects());
  std::vector<double> means(count, 0);
  for (std::size_t subject = 0; subject < items.subjects(); ++subject) {
    for (std::size_t item = 0; item < count; ++item) {
      means[item] += items.at(subject, item) / subjects;
    }
  }
  Table result(count, std::vector<double>(count, 0));
  for (std::size_t subject = 0; subject < items.subjects(); ++subject) {
    for (std::size_t one = 0; one < count; ++one) {
      for (std::size_t other = 0; other < count; ++other) {
        result[one][other] += (items.at(subject, one) - means[one]) *
                              (items.at(subject, other) - means[other]) / (subjects - 1);
      }
    }
  }
  return result;
}

constexpr std::size_t no_item = static_cast<std::size_t>(-1);

// Of the items but one.
double alpha_of(const Table& covariance, std::size_t left_out) {
  double items = 0;
  double own = 0;
  double total = 0;
  for (std::size_t one = 0; one < covariance.size(); ++one) {
    if (one == left_out) {
      continue;
    }
    items += 1;
    own += covariance[one][one];
    for (std::size_t other = 0; other < covariance.size(); ++other) {
      total += other == left_out ? 0 : covariance[one][other];
    }
  }
  return cronbach_alpha(items, own, total);
}

double standardised(const Table& covariance) {
  const auto items = static_cast<double>(covariance.size());
  double sum = 0;
  for (std::size_t one = 0; one < covariance.size(); ++one) {
    for (std::size_t other = 0; other < covariance.size(); ++other) {
      const double scale = std::sqrt(covariance[one][one] * covariance[other][other]);
      sum += one == other ? 0 : covariance[one][other] / scale;
    }
  }
  const double mean = sum / (items * (items - 1));
  const double alpha = items * mean / (1 + (items - 1) * mean);
  return std::isfinite(alpha) ? alpha : unknown;
}

}  // namespace

double cronbach_alpha(double items, double sum_of_item_variances, double total_variance) {
  if (items < 2 || !(total_variance > 0)) {
    return unknown;
  }
  return items / (items - 1) * (1 - sum_of_item_variances / total_variance);
}

InternalConsistency internal_consistency(const Ratings& items) {
  const Ratings whole = items.rated_by(items.observers());
  InternalConsistency result;
  if (whole.subjects() < 2 || whole.observers() < 2) {
    return result;
  }
  const Table covariance = covariances(whole);
  result.alpha = alpha_of(covariance, no_item);
  if (std::isnan(result.alpha)) {
    return result;
  }
  result.standardised_alpha = standardised(covariance);
  result.total_variance = 0;
  for (std::size_t item = 0; item < covariance.size(); ++item) {
    result.item_variances.push_back(covariance[item][item]);
    for (const double shared : covariance[item]) {
      result.total_variance += shared;
    }
    result.alpha_without.push_back(alpha_of(covariance, item));
  }
  result.total_error = std::sqrt(result.total_variance * (1 - result.alpha));
  return result;
}

}  // namespace heelrule

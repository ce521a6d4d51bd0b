#include "engine/agreement/measurement_error.hpp"

#include "engine/agreement/resampling.hpp"

namespace heelrule {
namespace {

// Two readings, each with this error, differ by more than that 1 in 20 times.
double change_factor() { return normal_quantile(upper_tail) * std::sqrt(2.0); }

constexpr std::size_t most_ratings_to_resample = 20'000;

// The root of a variance that was found with `freedom` degrees of freedom.
Estimate deviation(double variance, double freedom) {
  if (!(freedom >= 1) || !(variance > 0)) {
    return {std::sqrt(variance), unknown, {}, IntervalBy::none};
  }
  return {std::sqrt(variance),
          unknown,
          {std::sqrt(variance * freedom / chi_squared_quantile(upper_tail, freedom)),
           std::sqrt(variance * freedom / chi_squared_quantile(1 - upper_tail, freedom))},
          IntervalBy::chi_squared};
}

Estimate times(Estimate estimate, double factor) {
  estimate.value *= factor;
  estimate.standard_error *= factor;
  estimate.interval.low *= factor;
  estimate.interval.high *= factor;
  return estimate;
}

double agreement_error(const MeanSquares& squares) {
  const double observers = (squares.between_observers - squares.residual) / squares.subjects;
  return std::sqrt(std::fmax(observers, 0) + squares.residual);
}

Estimate agreement_error(const Ratings& ratings, const MeanSquares& squares) {
  const double value = agreement_error(squares);
  if (ratings.count() > most_ratings_to_resample || !(value > 0)) {
    return {value, unknown, {}, IntervalBy::none};
  }
  const Ratings whole = ratings.rated_by(ratings.observers());
  return resampled(value, whole.subjects(), [&](const auto& rows) {
    return agreement_error(mean_squares(whole.rows(rows)));
  });
}

// Sums over the subjects with two readings or more.
struct Scatter {
  double readings = 0;
  double subjects = 0;
  double sum = 0;
  double within = 0;
};

Scatter scatter_of(const Ratings& ratings) {
  Scatter scatter;
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    double count = 0;
    double sum = 0;
    for (std::size_t observer = 0; observer < ratings.observers(); ++observer) {
      if (ratings.has(subject, observer)) {
        count += 1;
        sum += ratings.at(subject, observer);
      }
    }
    for (std::size_t observer = 0; observer < ratings.observers(); ++observer) {
      if (ratings.has(subject, observer)) {
        const double from_mean = ratings.at(subject, observer) - sum / count;
        scatter.within += from_mean * from_mean;
      }
    }
    scatter.readings += count;
    scatter.subjects += 1;
    scatter.sum += sum;
  }
  return scatter;
}

double variance_of_all(const Ratings& ratings, double mean, double readings) {
  double squares = 0;
  for (std::size_t subject = 0; subject < ratings.subjects(); ++subject) {
    for (std::size_t observer = 0; observer < ratings.observers(); ++observer) {
      if (ratings.has(subject, observer)) {
        const double from_mean = ratings.at(subject, observer) - mean;
        squares += from_mean * from_mean;
      }
    }
  }
  return squares / (readings - 1);
}

}  // namespace

MeasurementError measurement_error(const Ratings& ratings) {
  const Ratings repeated = ratings.rated_by(2);
  const Scatter scatter = scatter_of(repeated);
  MeasurementError result;
  result.readings = scatter.readings;
  const double freedom = scatter.readings - scatter.subjects;
  if (!(freedom >= 1)) {
    return result;
  }
  const double variance = scatter.within / freedom;
  const double mean = scatter.sum / scatter.readings;
  result.technical = deviation(variance, freedom);
  result.relative = mean > 0 ? result.technical.value / mean : unknown;
  result.repeatability = change_factor() * result.technical.value;
  const double whole = variance_of_all(repeated, mean, scatter.readings);
  result.reliability = whole > 0 ? 1 - variance / whole : unknown;
  const MeanSquares squares = mean_squares(ratings);
  if (!squares.is_known()) {
    return result;
  }
  result.agreement_error = agreement_error(ratings, squares);
  result.consistency_error = deviation(squares.residual, squares.residual_freedom());
  result.agreement_change = times(result.agreement_error, change_factor());
  result.consistency_change = times(result.consistency_error, change_factor());
  return result;
}

double technical_error(const Ratings& ratings) {
  const Scatter scatter = scatter_of(ratings.rated_by(2));
  const double freedom = scatter.readings - scatter.subjects;
  return freedom >= 1 ? std::sqrt(scatter.within / freedom) : unknown;
}

}  // namespace heelrule

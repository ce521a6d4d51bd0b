#include "engine/agreement/measurement_error.hpp"

#include <vector>

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

double error_of_agreement(const MeanSquares& squares) {
  const double observers = (squares.between_observers - squares.residual) / squares.subjects;
  return std::sqrt(std::fmax(observers, 0) + squares.residual);
}

// A table without gaps, taken from its mean, from which subjects are drawn again and again: the
// mean squares come out of sums, in one pass over the drawn rows.
class Redrawn {
 public:
  Redrawn(const Ratings& whole, double mean)
      : observers_(whole.observers()), sums_(whole.subjects(), 0), of_observers_(observers_, 0) {
    for (std::size_t subject = 0; subject < whole.subjects(); ++subject) {
      for (std::size_t observer = 0; observer < observers_; ++observer) {
        const double reading = whole.at(subject, observer) - mean;
        readings_.push_back(reading);
        sums_[subject] += reading;
      }
    }
  }

  double agreement_error(const std::vector<std::size_t>& rows) {
    const auto subjects = static_cast<double>(rows.size());
    const auto observers = static_cast<double>(observers_);
    of_observers_.assign(observers_, 0);
    double total = 0;
    double squares = 0;
    double of_subjects = 0;
    for (const std::size_t row : rows) {
      total += sums_[row];
      of_subjects += sums_[row] * sums_[row] / observers;
      for (std::size_t observer = 0; observer < observers_; ++observer) {
        const double reading = readings_[row * observers_ + observer];
        of_observers_[observer] += reading;
        squares += reading * reading;
      }
    }
    double between_observers = 0;
    for (const double sum : of_observers_) {
      between_observers += sum * sum / subjects;
    }
    const double centre = total * total / (subjects * observers);
    MeanSquares found;
    found.subjects = subjects;
    found.observers = observers;
    found.between_observers = (between_observers - centre) / (observers - 1);
    found.residual =
        std::fmax(squares - of_subjects - between_observers + centre, 0) / found.residual_freedom();
    return error_of_agreement(found);
  }

 private:
  std::size_t observers_;
  std::vector<double> readings_;
  std::vector<double> sums_;
  std::vector<double> of_observers_;
};

Estimate resampled_agreement_error(const Ratings& ratings, const MeanSquares& squares) {
  const double value = error_of_agreement(squares);
  if (ratings.count() > most_ratings_to_resample || !(value > 0)) {
    return {value, unknown, {}, IntervalBy::none};
  }
  const Ratings whole = ratings.rated_by(ratings.observers());
  Redrawn redrawn(whole, squares.mean);
  return resampled(value, whole.subjects(),
                   [&](const auto& rows) { return redrawn.agreement_error(rows); });
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
  each_rating(ratings, [&](std::size_t, std::size_t, double rating) {
    squares += (rating - mean) * (rating - mean);
  });
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
  result.agreement_error = resampled_agreement_error(ratings, squares);
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

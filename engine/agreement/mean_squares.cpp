#include "engine/agreement/mean_squares.hpp"

#include <vector>

namespace heelrule {
namespace {

double mean_of(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) {
    sum += value;
  }
  return sum / static_cast<double>(values.size());
}

double squares_about(const std::vector<double>& values, double centre) {
  double squares = 0;
  for (const double value : values) {
    squares += (value - centre) * (value - centre);
  }
  return squares;
}

}  // namespace

MeanSquares mean_squares(const Ratings& ratings) {
  const Ratings whole = ratings.rated_by(ratings.observers());
  MeanSquares result;
  result.subjects = static_cast<double>(whole.subjects());
  result.observers = static_cast<double>(whole.observers());
  if (whole.subjects() < 2 || whole.observers() < 2) {
    return result;
  }
  std::vector<double> of_subjects(whole.subjects(), 0);
  std::vector<double> of_observers(whole.observers(), 0);
  for (std::size_t subject = 0; subject < whole.subjects(); ++subject) {
    for (std::size_t observer = 0; observer < whole.observers(); ++observer) {
      of_subjects[subject] += whole.at(subject, observer) / result.observers;
      of_observers[observer] += whole.at(subject, observer) / result.subjects;
    }
  }
  result.mean = mean_of(of_subjects);
  double within = 0;
  double left = 0;
  for (std::size_t subject = 0; subject < whole.subjects(); ++subject) {
    for (std::size_t observer = 0; observer < whole.observers(); ++observer) {
      const double from_subject = whole.at(subject, observer) - of_subjects[subject];
      const double from_both = from_subject - (of_observers[observer] - result.mean);
      within += from_subject * from_subject;
      left += from_both * from_both;
    }
  }
  result.between_subjects =
      result.observers * squares_about(of_subjects, result.mean) / result.subject_freedom();
  result.within_subjects = within / result.within_freedom();
  result.between_observers =
      result.subjects * squares_about(of_observers, result.mean) / (result.observers - 1);
  result.residual = left / result.residual_freedom();
  return result;
}

}  // namespace heelrule

#include "engine/agreement/borderline_regression.hpp"

namespace heelrule {

BorderlineRegression borderline_regression(std::span<const RatedMark> marks, double border) {
  BorderlineRegression result;
  result.students = static_cast<double>(marks.size());
  if (marks.size() < 3) {
    return result;
  }
  RatedMark mean;
  for (const RatedMark& one : marks) {
    mean.rating += one.rating / result.students;
    mean.mark += one.mark / result.students;
  }
  double across = 0;
  double up = 0;
  double both = 0;
  for (const RatedMark& one : marks) {
    across += (one.rating - mean.rating) * (one.rating - mean.rating);
    up += (one.mark - mean.mark) * (one.mark - mean.mark);
    both += (one.rating - mean.rating) * (one.mark - mean.mark);
  }
  if (!(across > 0)) {
    return result;
  }
  result.slope = both / across;
  result.at_zero = mean.mark - result.slope * mean.rating;
  double left = 0;
  for (const RatedMark& one : marks) {
    const double from_line = one.mark - (result.at_zero + result.slope * one.rating);
    left += from_line * from_line;
  }
  const double freedom = result.students - 2;
  result.deviation = std::sqrt(left / freedom);
  result.explained = up > 0 ? 1 - left / up : unknown;
  const double away = border - mean.rating;
  const double error = result.deviation * std::sqrt(1 / result.students + away * away / across);
  result.cut =
      student_estimate(result.at_zero + result.slope * border, error, freedom, -HUGE_VAL, HUGE_VAL);
  return result;
}

}  // namespace heelrule

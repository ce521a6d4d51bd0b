#include "engine/agreement/borderline_group.hpp"

#include <utility>

#include "engine/agreement/median.hpp"

namespace heelrule {

BorderlineGroup borderline_group(std::vector<double> marks) {
  BorderlineGroup result;
  result.students = static_cast<double>(marks.size());
  if (marks.empty()) {
    return result;
  }
  double mean = 0;
  for (const double mark : marks) {
    mean += mark / result.students;
  }
  double squares = 0;
  for (const double mark : marks) {
    squares += (mark - mean) * (mark - mean);
  }
  result.median = median(std::move(marks));
  const double freedom = result.students - 1;
  const double error = freedom > 0 ? std::sqrt(squares / freedom / result.students) : unknown;
  result.mean = student_estimate(mean, error, freedom, -HUGE_VAL, HUGE_VAL);
  return result;
}

}  // namespace heelrule

#include "engine/agreement/borderline_group.hpp"

#include <utility>

#include "engine/agreement/median.hpp"
#include "engine/agreement/moments.hpp"

namespace heelrule {

BorderlineGroup borderline_group(std::vector<double> marks) {
  BorderlineGroup result;
  result.students = static_cast<double>(marks.size());
  if (marks.empty()) {
    return result;
  }
  const Moments moments = moments_of(marks);
  const double freedom = moments.freedom();
  const double error = freedom > 0 ? std::sqrt(moments.squares / freedom / moments.count) : unknown;
  result.mean = student_estimate(moments.mean, error, freedom, -HUGE_VAL, HUGE_VAL);
  result.median = median(std::move(marks));
  return result;
}

}  // namespace heelrule

#include "engine/agreement/angoff.hpp"

#include "engine/agreement/moments.hpp"

namespace heelrule {

Angoff angoff(const Ratings& chances) {
  Angoff result;
  const auto judges = static_cast<double>(chances.subjects());
  const auto tasks = static_cast<double>(chances.observers());
  if (chances.subjects() == 0 || chances.observers() == 0) {
    return result;
  }
  result.task_means.assign(chances.observers(), 0);
  for (std::size_t judge = 0; judge < chances.subjects(); ++judge) {
    double cut = 0;
    for (std::size_t task = 0; task < chances.observers(); ++task) {
      cut += chances.at(judge, task);
      result.task_means[task] += chances.at(judge, task) / judges;
    }
    result.judge_cuts.push_back(cut);
  }
  const Moments cuts = moments_of(result.judge_cuts);
  result.share = cuts.mean / tasks;
  result.deviation = cuts.deviation();
  result.cut =
      student_estimate(cuts.mean, result.deviation / std::sqrt(judges), cuts.freedom(), 0, tasks);
  return result;
}

}  // namespace heelrule

#include "engine/agreement/angoff.hpp"

namespace heelrule {

Angoff angoff(const Ratings& chances) {
  Angoff result;
  const auto judges = static_cast<double>(chances.subjects());
  const auto tasks = static_cast<double>(chances.observers());
  if (chances.subjects() == 0 || chances.observers() == 0) {
    return result;
  }
  result.task_means.assign(chances.observers(), 0);
  double mean = 0;
  for (std::size_t judge = 0; judge < chances.subjects(); ++judge) {
    double cut = 0;
    for (std::size_t task = 0; task < chances.observers(); ++task) {
      cut += chances.at(judge, task);
      result.task_means[task] += chances.at(judge, task) / judges;
    }
    result.judge_cuts.push_back(cut);
    mean += cut / judges;
  }
  result.share = mean / tasks;
  double squares = 0;
  for (const double cut : result.judge_cuts) {
    squares += (cut - mean) * (cut - mean);
  }
  result.deviation = judges > 1 ? std::sqrt(squares / (judges - 1)) : unknown;
  result.cut = student_estimate(mean, result.deviation / std::sqrt(judges), judges - 1, 0, tasks);
  return result;
}

}  // namespace heelrule

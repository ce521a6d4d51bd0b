// A pass mark from what judges expect of somebody who just passes.
#pragma once

#include <vector>

#include "engine/agreement/ratings.hpp"

namespace heelrule {

struct Angoff {
  std::vector<double> judge_cuts;  ///< expected number of tasks, by judge
  std::vector<double> task_means;  ///< expected share, by task
  Estimate cut;                    ///< mean of the judges' numbers of tasks, with Student's t
  double deviation = unknown;      ///< standard deviation of the judges
  double share = unknown;          ///< the cut as a share of all tasks
};

/// Angoff 1971 (in Thorndike, Educational Measurement; from memory). `chances` has a row for each
/// judge and a column for each task, 0 to 1, no gaps. Unknown without judges.
Angoff angoff(const Ratings& chances);

}  // namespace heelrule

// A pass mark as a compromise between what is acceptable and what the marks are.
#pragma once

#include <vector>

#include "engine/agreement/estimate.hpp"
#include "engine/reading/read_pass_sheet.hpp"

namespace heelrule {

/// How many would fail, as a share, if the pass mark stood there.
struct FailsAt {
  double mark = 0;
  double fails = 0;
};

struct Hofstee {
  std::vector<FailsAt> curve;  ///< from the least acceptable mark to the most, a point apart
  Estimate cut;                ///< unknown where the curve never meets what is acceptable
  double fails = unknown;      ///< the share that fails there
};

/// Hofstee 1983 (in Anderson and Helmick, On Educational Testing; from memory): the curve of those
/// who fail meets the line that falls from the least acceptable mark with the most acceptable fails
/// to the most acceptable mark with the least. A mark fails that lies below the pass mark; between
/// two points of the curve it is straight. The interval comes from drawing students again.
Hofstee hofstee(const std::vector<double>& marks, const AcceptablePass& acceptable);

}  // namespace heelrule

// A pass mark from the students on the border.
#pragma once

#include <vector>

#include "engine/agreement/estimate.hpp"

namespace heelrule {

struct BorderlineGroup {
  double students = 0;
  Estimate mean;  ///< of their marks, with Student's t
  double median = unknown;
};

/// The marks of those whose whole work was rated to lie on the border (Livingston and Zieky 1982;
/// from memory). Unknown where there is nobody.
BorderlineGroup borderline_group(std::vector<double> marks);

}  // namespace heelrule

// Two feet recorded by a small rule set, and all that `size` makes of them.
#pragma once

#include <string>

#include "engine/fitting/fitting.hpp"
#include "tests/unit/report/graded.hpp"

namespace heelrule {

struct Fitted {
  Graded graded;
  Fitting fitting;
};

/// The fitting of a record with these lines under `found:`, indented by two blanks, and this answer
/// to the rule set's one safety question, whether the feet are numb.
Fitted fitted(const std::string& found, const std::string& numb = "no");

}  // namespace heelrule

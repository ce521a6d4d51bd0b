// A child's growth in words: how fast, until when a pair lasts, and when to measure again.
#pragma once

#include <string>
#include <vector>

#include "engine/fitting/fitting.hpp"

namespace heelrule {

/// Nothing for grown feet. `for_children`: the rule set is for children, so that an age that was
/// not recorded is missed.
std::vector<std::string> growth_words(const Fitting& fitting, bool for_children);

/// A day counted from the date of the visit, `2027-01-12`; where that is not known, `in 3.3
/// months`.
std::string day_words(const Visit& visit, int day);

}  // namespace heelrule

// What to ask for in a shop, in words.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "engine/fitting/fitting.hpp"

namespace heelrule {

/// The inside length to look for, width and girth, what to do for the smaller foot, and what
/// printed sizes are worth.
std::vector<std::string> shoe_words(const Fitting& fitting);

/// A row for each system that has a size for the foot: what to ask for, and how it came about.
std::vector<std::pair<std::string, std::string>> size_rows(const ShoeAdvice& advice);

}  // namespace heelrule

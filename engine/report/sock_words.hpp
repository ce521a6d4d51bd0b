// Socks in words: whether they are made for these feet, and what they do to them.
#pragma once

#include <string>
#include <vector>

#include "engine/fitting/fitting.hpp"

namespace heelrule {

/// Nothing where nothing was recorded of socks. `without_advice`: what was found is told, and what
/// to choose is left out.
std::vector<std::string> sock_words(const Fitting& fitting, bool without_advice);

}  // namespace heelrule

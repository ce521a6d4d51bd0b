// Which traits a rule depends on.
#pragma once

#include <cstddef>
#include <vector>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// The traits that are recorded and that a rule's value, or whether it applies, is worked out from;
/// each once, in order.
std::vector<std::size_t> traits_needed(const Program& program, std::size_t rule);

}  // namespace heelrule

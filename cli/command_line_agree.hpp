// The arguments of `heelrule agree`.
#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace heelrule {

/// Reads what follows `agree`.
Parsed<CommandLine> parse_agree(const std::vector<std::string>& arguments);

}  // namespace heelrule

// The arguments of `heelrule mark`.
#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace heelrule {

/// Reads what follows `mark`.
Parsed<CommandLine> parse_mark(const std::vector<std::string>& arguments);

}  // namespace heelrule

// The arguments of `heelrule pass`.
#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace heelrule {

/// Reads what follows `pass`.
Parsed<CommandLine> parse_pass(const std::vector<std::string>& arguments);

}  // namespace heelrule

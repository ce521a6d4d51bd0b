// The command line of `heelrule sheet`.
#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace heelrule {

/// Reads the arguments after `sheet`.
Parsed<CommandLine> parse_sheet(const std::vector<std::string>& arguments);

}  // namespace heelrule

// The command line of `heelrule record`.
#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace heelrule {

/// Reads the arguments after `record`.
Parsed<CommandLine> parse_record(const std::vector<std::string>& arguments);

}  // namespace heelrule

// The arguments of `heelrule size`.
#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace heelrule {

/// Reads what follows `size`.
Parsed<CommandLine> parse_size(const std::vector<std::string>& arguments);

}  // namespace heelrule

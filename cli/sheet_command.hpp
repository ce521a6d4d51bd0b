// `heelrule sheet`
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

/// Prints a blank sheet of a rule set.
ExitStatus run(const SheetCommand& command, const RuleFiles& files);

}  // namespace heelrule

// `heelrule pass`: pass marks from a sheet.
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

ExitStatus run(const PassCommand& command, const RuleFiles& files);

}  // namespace heelrule

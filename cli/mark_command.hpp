// `heelrule mark`: records beside a reference.
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

ExitStatus run(const MarkCommand& command, const RuleFiles& files);

}  // namespace heelrule

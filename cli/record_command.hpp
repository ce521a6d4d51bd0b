// `heelrule record`: an inspection, question by question.
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

/// Asks for an inspection and writes it, or amends one.
ExitStatus run(const RecordCommand& command, const RuleFiles& files);

}  // namespace heelrule

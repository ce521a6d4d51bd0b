// `heelrule grade`: the graded report.
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

ExitStatus run(const GradeCommand& command, const RuleFiles& files);

}  // namespace heelrule

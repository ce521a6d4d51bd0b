// `heelrule proof`: every mistake in a rule set.
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

ExitStatus run(const ProofCommand& command, const RuleFiles& files);

}  // namespace heelrule

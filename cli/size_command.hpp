// `heelrule size`: from feet to sizes, socks and dates.
#pragma once

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"

namespace heelrule {

ExitStatus run(const SizeCommand& command, const RuleFiles& files);

}  // namespace heelrule

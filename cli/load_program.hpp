// A rule set by its name, compiled; or what is wrong with it, already printed.
#pragma once

#include <optional>
#include <string>

#include "cli/exit_status.hpp"
#include "cli/rule_files.hpp"
#include "engine/scoring/program.hpp"
#include "engine/source/checked.hpp"

namespace heelrule {

/// A rule set as far as it could be compiled, and the texts that its diagnostics point into.
struct CompiledRules {
  Sources sources;
  Checked<Program> program;
  Node tree;          ///< what the program was made from: all files joined
  Problem not_found;  ///< empty unless there is no such rule set
};

/// Reads and compiles a rule set.
CompiledRules compile_rules(const std::string& name, const RuleFiles& files);

/// Prints why a rule set cannot be run, and gives the exit status that says so; nothing where it
/// can.
std::optional<ExitStatus> refuse_unsound(const CompiledRules& compiled);

/// Prints a problem that has no place in a file, as all commands do.
void write_problem(const Problem& problem);

}  // namespace heelrule

// The rule sets that ship, as the program finds and compiles them.
#pragma once

#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"
#include "engine/source/checked.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// The names of all rule sets that ship, in the order of the alphabet.
std::vector<std::string> shipped_rule_sets();

/// A file as a text. The running test fails where it cannot be read.
std::string content_of(const std::string& path);

/// A rule set by its name, with all that it extends; its texts are added to `sources`.
Checked<Program> compiled(const std::string& rule_set, Sources& sources);

/// The same. The running test fails unless it compiles.
Program shipped_program(const std::string& rule_set);

/// The names of the rules that a file defines or changes itself, in the order written.
std::vector<std::string> rules_in_file(const std::string& rule_set);

/// A record read against a rule set. The running test fails unless it can be read.
Inspection record_for(const Program& program, const std::string& name, const std::string& text);

/// What a rule came to; of a rule whose sides count each, the left one. The running test fails
/// where there is no such rule.
const Finding& finding_of(const Program& program, const Verdict& verdict, const std::string& rule);

}  // namespace heelrule

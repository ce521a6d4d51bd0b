// From house rules as written to a program that can be run.
#pragma once

#include "engine/model/rule_set.hpp"
#include "engine/scoring/program.hpp"
#include "engine/source/checked.hpp"

namespace heelrule {

/// Cross-checks a rule set and makes it ready to run. Reported, all in one go: unknown traits,
/// sections and grades; formulas that do not parse, mix units or run in a circle; cut points out of
/// order or of the wrong kind; bands and grades that nothing can reach; missing levels;
/// placeholders that cannot be filled. Warned of: texts that lack a listed language, sections
/// without a rule.
///
/// What holds afterwards: every register is written before it is read, cut points ascend, the sum
/// of all weights times full credit is below 2^53 (so that sums are exact), grades descend to 0.
///
/// `diagnostics` are those of reading the rule set. What could not be read is passed over here, so
/// that a slip is reported once and everything else is still checked.
Checked<Program> compile(RuleSet rules, Diagnostics diagnostics = {});

}  // namespace heelrule

// Rule sets and records in short, for the message of a check that failed.
#pragma once

#include <string>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// Traits with their formulas, rules with all that their score depends on, and grades.
std::string outline(const RuleSet& rules);

/// What was recorded, one trait of one side a line.
std::string outline(const RuleSet& rules, const Inspection& inspection);

}  // namespace heelrule

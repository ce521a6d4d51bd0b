// The sections of a rule set, held against what stands in them.
#pragma once

#include <string_view>
#include <vector>

#include "engine/model/rule_set.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Reports traits whose section is unknown, and warns of sections in which nothing stands. (Of
/// rules, `check_rules` sees to it.)
void check_sections(const RuleSet& rules, Diagnostics& diagnostics);

/// The names of all sections, in the order in which they are shown.
std::vector<std::string_view> section_names(const RuleSet& rules);

}  // namespace heelrule

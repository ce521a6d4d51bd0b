// A whole rule set from the joined tree of its files.
#pragma once

#include <string>

#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/checked.hpp"

namespace heelrule {

/// Reads every key of a rule set. Nothing is cross-checked: that is for `compile`. Reported:
/// whatever is not of the kind that is expected where it stands, unknown and missing keys.
RuleSet read_rule_set(const std::string& name, const Node& tree, Diagnostics& diagnostics);

}  // namespace heelrule

// A trait, as written in a rule file.
#pragma once

#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Reads one entry of `traits`.
Trait read_trait(const Located<std::string>& name, const Node& node, Diagnostics& diagnostics);

/// Reads one entry of `safety`: a yes/no trait, and the referral that a yes brings.
struct SafetyEntry {
  Trait trait;
  Text referral;
};
SafetyEntry read_safety(const Located<std::string>& name, const Node& node,
                        Diagnostics& diagnostics);

}  // namespace heelrule

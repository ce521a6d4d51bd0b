// Texts that lack a language which the rule set promises.
#pragma once

#include "engine/model/rule_set.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Warns of each text that has wordings by language but not for every one that `languages` lists,
/// and of each plain text where several languages are listed. Such a text falls back in the order
/// of the list.
void check_languages(const RuleSet& rules, Diagnostics& diagnostics);

}  // namespace heelrule

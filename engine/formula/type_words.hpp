// Types in words, for messages.
#pragma once

#include <string>

#include "engine/formula/expression.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// `a length`, `an angle`, `yes or no`, ``a level of `heel_counter` ``, ``a choice of
/// `fastening` ``.
std::string in_words(const Type& type, const RuleSet& rules);

}  // namespace heelrule

// What a record holds, value by value, as it was written down.
#pragma once

#include <span>
#include <string>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// A recorded value in words: `243 mm`; repeats with their mean, `246, 247, 246 mm, mean 246.3 mm`;
/// `firm`; `80 % cotton, 20 % elastane`; `EU 39`; `not seen: the client tired`. Measures are in the
/// unit of their trait.
std::string recorded_words(const RuleSet& rules, const Observation& seen);

/// How far one reading of it is to be trusted, `1 mm`: what the record says, else the trait; empty
/// where neither does, and for all that is no measure.
std::string recorded_doubt_words(const RuleSet& rules, const Observation& seen);

}  // namespace heelrule

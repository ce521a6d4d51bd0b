// From checked formulas and rules to instructions over registers.
#pragma once

#include <vector>

#include "engine/scoring/derive_types.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Writes the inputs, constants, instructions, judgements and contributions of a program whose
/// `rules`, `rule_programs` and grade bounds are in place. `applies` has an expression for each
/// rule that applies only at times, and then for each change. What is needed twice is worked out
/// once. Never fails: everything was checked before.
void lower(const TraitTypes& traits, const std::vector<std::optional<Expression>>& applies,
           Program& program);

}  // namespace heelrule

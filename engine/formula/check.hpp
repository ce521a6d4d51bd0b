// From a formula as written to one that can be worked out.
#pragma once

#include <optional>
#include <span>

#include "engine/formula/expression.hpp"
#include "engine/formula/syntax.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// Gives each name its meaning and checks kinds, units and sides. `types` has an entry for each
/// trait of `rules`; an empty one belongs to a trait that could not be checked itself, and a
/// formula that reads it fails without a word of its own. Every fault found is reported.
std::optional<Expression> check_formula(const Syntax& syntax, const RuleSet& rules,
                                        std::span<const std::optional<TraitType>> types,
                                        Diagnostics& diagnostics);

}  // namespace heelrule

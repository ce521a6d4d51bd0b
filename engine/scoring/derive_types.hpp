// What kind of value each trait has, and the formulas of those that are derived.
#pragma once

#include <optional>
#include <vector>

#include "engine/formula/expression.hpp"
#include "engine/formula/syntax.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// What became of each trait. A trait that could not be checked has no type.
struct TraitTypes {
  std::vector<std::optional<TraitType>> types;
  std::vector<std::optional<Expression>> expressions;  ///< of derived traits
  std::vector<std::size_t> order;  ///< derived traits, each after those that it reads
};

/// Checks the formulas of all derived traits, each after those it reads. Reports faults in them,
/// and circles of traits that read each other, with every name of the circle.
TraitTypes derive_types(const RuleSet& rules, Diagnostics& diagnostics);

}  // namespace heelrule

// Rules held against the traits, sections and grades that they name.
#pragma once

#include <optional>
#include <vector>

#include "engine/scoring/derive_types.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Checks every rule and prepares its credit scale and its words. A rule with a fault has no entry.
/// Registers
/// (`applies_needs`) are filled in later, by `lower`.
std::vector<std::optional<RuleProgram>> check_rules(const RuleSet& rules, const TraitTypes& traits,
                                                    Diagnostics& diagnostics);

/// The unit in which a trait's number is printed.
Unit printed_unit(const Trait& trait, const Type& type);

}  // namespace heelrule

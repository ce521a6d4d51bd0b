// What a rule depends on.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// The inputs of a row from which a rule's value on any side, or whether it applies, is worked out,
/// be it through formulas; each once, in order. `rule` is an index in `RuleSet::rules`.
std::vector<Register> inputs_needed(const Program& program, std::size_t rule);

/// The traits whose values those are; each once, in order. All of them are recorded.
std::vector<std::size_t> traits_needed(const Program& program, std::size_t rule);

/// By trait: the section of the first rule that needs it, as an index in `RuleSet::sections`;
/// nothing of a trait that no rule needs.
std::vector<std::optional<std::size_t>> sections_of_rules(const Program& program);

}  // namespace heelrule

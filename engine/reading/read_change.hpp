// One change of a pair, as its rule set writes it.
#pragma once

#include "engine/model/change.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Reads a change whose traits are those of `rules`, which have all been read. Reported: a trait
/// that is not there, is worked out, or is no plain value; a value that it cannot have; an amount
/// where none can be added; a change that moves nothing, or one trait twice.
Change read_change(const Located<std::string>& name, const Node& node, const RuleSet& rules,
                   Diagnostics& diagnostics);

}  // namespace heelrule

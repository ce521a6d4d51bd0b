// Maps from trait to value, as records, changes and marking files have them.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "engine/model/rule_set.hpp"
#include "engine/reading/map_reader.hpp"

namespace heelrule {

/// The value of a key, which is to be a map from trait to value; null if it is not there, or if it
/// is something else, which is reported with `hint`.
const Node* take_trait_map(MapReader& map, std::string_view key, std::string_view hint);

/// The place of a trait among `rules.traits`; none if there is no such trait, which is reported
/// with the nearest name, or with `hint` where none is near.
std::optional<std::size_t> named_trait(const RuleSet& rules, const Located<std::string>& name,
                                       std::string_view hint, Diagnostics& diagnostics);

}  // namespace heelrule

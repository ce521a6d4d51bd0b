// What the places of a record are called.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "engine/model/rule_set.hpp"

namespace heelrule {

/// The title of an item of a record's head by its key; empty where there is no such item.
///
///     head_title("inspection.observer")  ->  "Recorded by"
std::string_view head_title(std::string_view key);

/// What an answer is called by its key: the title of an item of the head, or the question with the
/// side that is meant; the key itself where the rule set has no such trait.
///
///     place_title(rules, "foot_length.left", languages)  ->  "Length of the standing foot (left)"
std::string place_title(const RuleSet& rules, std::string_view key,
                        std::span<const std::string> languages);

}  // namespace heelrule

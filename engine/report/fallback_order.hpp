// In which language a reader is spoken to.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/model/rule_set.hpp"

namespace heelrule {

/// The reader's languages, each followed by what it falls back to (RFC 4647, section 3.4: `es-MX`,
/// then `es`), and then those of the rule set.
std::vector<std::string> fallback_order(std::span<const std::string> languages,
                                        const RuleSet& rules);

}  // namespace heelrule

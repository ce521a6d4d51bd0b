// What was changed in a record after it was finished, in words.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"

namespace heelrule {

/// A sentence or two for each amendment, in the order of the record:
///
///     Insole length (left). It was: 234 mm. Changed by A-02 on 2026-10-04T08:12Z: misread.
std::vector<std::string> amendment_words(const RuleSet& rules, const Inspection& inspection,
                                         std::span<const std::string> languages);

}  // namespace heelrule

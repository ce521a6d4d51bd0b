// What the formulas of a rule set make of a record.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A derived trait on one side.
struct DerivedValue {
  std::size_t trait = 0;  ///< index in `RuleSet::traits`
  Side side = Side::none;
  std::string words;  ///< with its unit: `12 mm`

  bool operator==(const DerivedValue&) const = default;
};

/// All derived traits that can be worked out from what was recorded, in the order of the rule set.
std::vector<DerivedValue> derived_values(const Program& program, const Inspection& inspection);

}  // namespace heelrule

// What would have to be changed about a pair for a better grade.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "engine/model/inspection.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// A better grade, and the way to it.
struct BetterGrade {
  std::size_t grade = 0;
  std::optional<std::vector<std::size_t>> changes;  ///< indices in `RuleSet::changes`; none: no way

  bool operator==(const BetterGrade&) const = default;
};

/// For each grade better than `grade`, best first, a smallest set of changes that reaches it or a
/// better one, by what was seen. Exact: every combination of the rule set's changes that apply and
/// go together is graded, the smaller ones first. Two changes of one trait do not go together. Of
/// sets of one size the first in the order of the rule set is taken.
std::vector<BetterGrade> better_grades(const Program& program, const Inspection& inspection,
                                       std::size_t grade);

}  // namespace heelrule

// Grades: in order, down to nothing, and each within reach.
#pragma once

#include <optional>
#include <vector>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// Checks that the boundaries descend to 0 and that some record can reach each grade. `programs`
/// are the rules as checked; reach is looked at only when all of them are sound. Where a rule set
/// has few rules every combination of findings is tried; where it has many, or straight lines,
/// scores lie so close that only the best and the worst one matter.
void check_grades(const RuleSet& rules, const std::vector<std::optional<RuleProgram>>& programs,
                  Diagnostics& diagnostics);

/// The grade of a score: the first whose bound it meets. `earned` is Σ weight·credit (thousandths
/// times millionths) and `weight` is Σ weight (thousandths, above 0), both exact, so the comparison
/// is exact.
std::size_t grade_of(const std::vector<GradeBound>& bounds, double earned, double weight);

}  // namespace heelrule

// Bands and levels: from what was written to a scale of credit.
#pragma once

#include "engine/scoring/derive_types.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Checks the bands of a rule that reads `trait` and writes its credit scale, cuts and band words
/// to `program`. Reported: a trait that is no measure; cut points of another kind of unit, missing,
/// or out of order; bands that hold no value, or none that is plausible; a ramp without two ends.
void check_bands(const TraitType& type, const Trait& trait, const RuleSet& rules, const Rule& rule,
                 RuleProgram& program, Diagnostics& diagnostics);

/// The same for levels. Reported: a trait that has no levels; unknown, repeated and missing levels;
/// a ramp.
void check_levels(const TraitType& type, const Trait& trait, const RuleSet& rules, const Rule& rule,
                  RuleProgram& program, Diagnostics& diagnostics);

}  // namespace heelrule

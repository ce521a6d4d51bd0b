// Records at random.
#pragma once

#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "tests/laws/dice.hpp"

namespace heelrule {

/// A record for a rule set, in which each trait of each side is missing now and then, marked as not
/// seen, or repeated.
Inspection random_inspection(const RuleSet& rules, Dice& dice);

/// What can be recorded of a trait: any value that it can have.
Value random_value(const Trait& trait, Dice& dice);

/// `inspection` with a value at random for everything that it lacks.
Inspection completed(const RuleSet& rules, const Inspection& inspection, Dice& dice);

/// A length in mm on the grid of `random_rules`: tenths, which binary fractions only come near to;
/// two draws of three are halves, so that values meet. Not below `lowest_tenth`, in tenths.
double random_length(Dice& dice, int lowest_tenth);

}  // namespace heelrule

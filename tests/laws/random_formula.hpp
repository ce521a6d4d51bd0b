// Formulas at random.
#pragma once

#include <string>

#include "engine/model/rule_set.hpp"
#include "tests/laws/dice.hpp"

namespace heelrule {

/// What a formula is to come to.
enum class Wanted { length, number, yes_no };

/// Whether a formula may have two sides.
enum class Sides { allowed, none };

/// A formula over the traits of `rules` that `Wanted` says, as one would write it. At most `depth`
/// operations deep. The traits of `rules` are those that `random_rules` makes: `length_…` with a
/// measure in mm, `scale_…`, `choice_…`, `answer_…`, `number_…`, `fibres`.
std::string random_formula(const RuleSet& rules, Wanted wanted, Sides sides, std::size_t depth,
                           Dice& dice);

}  // namespace heelrule

// Rule sets at random, as odd as the rule language allows.
#pragma once

#include "engine/model/rule_set.hpp"
#include "engine/scoring/program.hpp"
#include "tests/laws/dice.hpp"

namespace heelrule {

/// A rule set of up to eight rules over measures with and without sides, scales, choices, answers,
/// a fibre content and derived traits that read each other; with bands that meet in open and closed
/// cut points, straight lines, musts, weights of 0 and rules that apply at times. Readings and cut
/// points lie on one coarse grid, so that values often meet an edge. Most of what comes out
/// compiles; see `random_program`.
RuleSet random_rules(Dice& dice);

/// The same, drawn until it compiles.
Program random_program(Dice& dice);

}  // namespace heelrule

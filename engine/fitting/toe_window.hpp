// How much space in front of the toes a rule set asks for.
#pragma once

#include "engine/model/rule_set.hpp"
#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// Space in front of the longest toe, standing. It comes from the rule set, so that what is asked
/// for in the shop and what is graded at the bench are the same.
struct ToeWindow {
  Millimetres used_up;  ///< below this a pair is too short: the upper end of the bands that earn
                        ///< nothing
  Millimetres least;    ///< of the bands that earn full credit
  Millimetres most;
};

/// The window of the rule `toe_allowance`: where its bands earn 100 % throughout. A problem where
/// the rule set has no such rule, or it earns full credit nowhere, or without an end.
///
///     toe_window(everyday)      ->  10 .. 15 mm, used up below 6 mm
///     toe_window(child)         ->  10 .. 17 mm, used up below 5 mm
///     toe_window(at-risk-foot)  ->  10 .. 20 mm, used up below 10 mm
Parsed<ToeWindow> toe_window(const RuleSet& rules);

}  // namespace heelrule

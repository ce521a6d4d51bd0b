// What a record says about sizes, found by the names of its traits.
#pragma once

#include "engine/fitting/visit.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/rule_set.hpp"
#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// The traits that are looked for, as `feet`, `hosiery`, `fit` and `child` name them:
///
///     foot_length           standing length of each foot; it has to be there
///     foot_length_seated    foot_width    foot_width_seated    ball_girth
///     sock_foot_length      standing in the sock
///     insole_length         inside of the shoe that is worn
///     sock_marked           sock_fibres   cuff_mark (its level `groove`)
///     child_age
///
/// What the rule set does not ask for, or the record does not hold, is left out. A problem: no rule
/// for `foot_length`, a trait of one of these names that is something else, or a record without a
/// standing length.
Parsed<Visit> visit_of_record(const RuleSet& rules, const Inspection& inspection);

/// Whether the rule set is for children: it asks for `child_age`.
bool is_for_children(const RuleSet& rules);

}  // namespace heelrule

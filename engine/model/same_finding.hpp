// The finding of one verdict that is in question in another.
#pragma once

#include "engine/model/verdict.hpp"

namespace heelrule {

/// The finding of the same rule and side in another verdict by the same rules; null where it has
/// none. Two records need not have the same findings in number, so a place in the list is no key.
const Finding* same_finding(const Verdict& other, const Finding& finding);

}  // namespace heelrule

// A rule, as written in a rule file.
#pragma once

#include "engine/model/rule.hpp"
#include "engine/reading/tree.hpp"
#include "engine/source/diagnostic.hpp"

namespace heelrule {

/// Reads one entry of `rules`. Names in it (traits, sections, grades) are not looked up here.
Rule read_rule(const Located<std::string>& name, const Node& node, Diagnostics& diagnostics);

}  // namespace heelrule

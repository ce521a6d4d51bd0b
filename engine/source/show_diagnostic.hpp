// Diagnostics as text.
#pragma once

#include <string>

#include "engine/source/diagnostic.hpp"
#include "engine/source/sources.hpp"

namespace heelrule {

/// A diagnostic in GNU form, with its line, a mark under the whole span, its notes and its hint:
///
///     fit.yaml:12:9: error: `wieght` is no key of a rule
///        12 |     wieght: 12
///           |     ^~~~~~
///     hint: did you mean `weight`?
///
/// Line and column count from 1, the column in characters. Text from files is shown safely, long
/// lines cut.
std::string show(const Diagnostic& diagnostic, const Sources& sources);

/// All of them by place, one after the other.
std::string show(const Diagnostics& diagnostics, const Sources& sources);

}  // namespace heelrule

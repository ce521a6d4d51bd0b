// A blank sheet to print.
#pragma once

#include <span>
#include <string>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// A whole HTML page that prints on A4 and Letter: boxes to tick for levels and answers, lines to
/// write on, a ruler below each measure that has a plausible range, in bench order; and after them,
/// for the back of the sheet, how to take each.
std::string paper_sheet(const Program& program, std::span<const std::string> languages);

}  // namespace heelrule

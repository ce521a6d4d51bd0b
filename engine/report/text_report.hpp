// The graded report as text, for a terminal, a pipe or a printer.
#pragma once

#include <span>
#include <string>

#include "engine/doubt/doubt.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

struct TextStyle {
  bool colour = false;  ///< ANSI colours where words already say the same
  std::span<const std::string> languages;
};

/// The report, 80 columns wide: safety and referrals, grade, what failed, what passed in part, what
/// passed, what was not seen, cautions, advice by what it would gain, and the usual cautions last.
/// With `doubt` it also says how sure all this is.
std::string text_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, const TextStyle& style,
                        const Doubt* doubt = nullptr);

}  // namespace heelrule

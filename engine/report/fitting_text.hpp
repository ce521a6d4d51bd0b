// A fitting as text, for a terminal, a pipe or a printer.
#pragma once

#include <string>

#include "engine/fitting/fitting.hpp"
#include "engine/report/text_report.hpp"

namespace heelrule {

/// 80 columns wide; the order is that of `fitting_account`.
std::string fitting_text(const Program& program, const Inspection& inspection,
                         const Verdict& verdict, const Fitting& fitting, const TextStyle& style);

}  // namespace heelrule

// A fitting as JSON, for other programs.
#pragma once

#include <span>
#include <string>

#include "engine/fitting/fitting.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Changes when a program that reads the JSON would have to change.
constexpr int fitting_json_version = 1;

/// One object, ended with a line feed. Lengths are in mm, with `doubt` as one standard uncertainty;
/// days count from the visit, and stand as dates too where its date is known. What is not known is
/// null. `ask` and `choose` are null where advice is held back; `said` holds the text, section by
/// section.
std::string fitting_json(const Program& program, const Inspection& inspection,
                         const Verdict& verdict, const Fitting& fitting,
                         std::span<const std::string> languages);

}  // namespace heelrule

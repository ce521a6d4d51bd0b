// The graded report as JSON, for programs.
#pragma once

#include <span>
#include <string>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// One verdict as a JSON object, as `verdict.schema.json` beside this file describes it: numbers in
/// the units that are named beside them, words as in the text report, keys in a fixed order. Ends
/// with a line feed.
std::string json_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, std::span<const std::string> languages);

}  // namespace heelrule

// The graded report as JSON, for programs.
#pragma once

#include <span>
#include <string>

#include "engine/doubt/doubt.hpp"
#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// One verdict as a JSON object, as `verdict.schema.json` beside this file describes it: numbers in
/// the units that are named beside them, words as in the text report, keys in a fixed order. Ends
/// with a line feed. With `doubt` it also says how sure all this is.
std::string json_report(const Program& program, const Inspection& inspection,
                        const Verdict& verdict, std::span<const std::string> languages,
                        const Doubt* doubt = nullptr);

}  // namespace heelrule

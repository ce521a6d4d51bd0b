// How sure a verdict is, as JSON.
#pragma once

#include "engine/doubt/doubt.hpp"
#include "engine/report/doubt_account.hpp"
#include "engine/report/json_writer.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// The doubt of the verdict as a whole, as an object. Chances are rounded to millionths.
void write_doubt(JsonWriter& json, const Program& program, const Doubt& doubt,
                 const DoubtAccount& told);

/// The doubt of one finding, as an object.
void write_finding_doubt(JsonWriter& json, const Program& program, const Finding& finding,
                         const FindingDoubt& doubt, const FindingDoubtAccount& told);

}  // namespace heelrule

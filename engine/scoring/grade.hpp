// One inspection, graded.
#pragma once

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// The verdict on an inspection that was read against `program.rules`. A batch of one row: see
/// `evaluate` for many, and `decide` for what the verdict holds.
Verdict grade(const Program& program, const Inspection& inspection);

}  // namespace heelrule

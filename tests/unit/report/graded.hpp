// A rule set and a record as text, and all that the engine makes of them.
#pragma once

#include <string>

#include "engine/model/inspection.hpp"
#include "engine/model/verdict.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

struct Graded {
  Program program;
  Inspection inspection;
  Verdict verdict;
};

/// Compiles the rule set, reads the record against it, and grades it. The running test fails with
/// the diagnostics where either is faulty.
Graded graded(const std::string& rules, const std::string& record);

/// A rule set of one rule, `space`, which reads a measure of both shoes in mm. `bands` is the list
/// in YAML; `more` are further keys of the rule, one a line, indented by four blanks.
std::string one_rule(const std::string& bands, const std::string& more = "");

/// A record for it.
std::string one_record(const std::string& left, const std::string& right);

}  // namespace heelrule

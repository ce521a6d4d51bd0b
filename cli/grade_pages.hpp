// heelrule grade --as html
#pragma once

#include <vector>

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "engine/report/report_subject.hpp"

namespace heelrule {

/// Writes the page of each record to where the command says, and with `--together` one more about
/// all of them. Nothing is written where the school's mark or template, or the record to compare
/// with, is not as it should be.
ExitStatus write_pages(const GradeCommand& command, const Program& program,
                       const std::vector<GradedRecord>& records);

}  // namespace heelrule

// heelrule grade RULES -, and heelrule grade RULES FILE.jsonl
#pragma once

#include <optional>

#include "cli/command_line.hpp"
#include "cli/exit_status.hpp"
#include "engine/scoring/program.hpp"

namespace heelrule {

/// Grades a stream of records: one line out for each line in, in order, whatever the number of
/// threads. Memory does not grow with the input. A record that cannot be read has a line of its own
/// in its place, and `bad_data` comes of it.
ExitStatus run(const BulkOrder& order, const GradeCommand& command, const Program& program,
               std::optional<std::size_t> at_least);

}  // namespace heelrule

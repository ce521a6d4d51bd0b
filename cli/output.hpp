// Writing to the standard streams, with every failure seen.
#pragma once

#include <string_view>

#include "cli/exit_status.hpp"

namespace heelrule {

/// Makes sure that no file takes the number of a closed standard stream, and that a closed pipe or
/// a full quota is an error of the write and not a signal. To be called before anything else.
void prepare_streams();

/// Writes all of `text` to standard output. `io_error` where that fails: with a message on standard
/// error, or silently where the reader of a pipe has gone.
ExitStatus write_output(std::string_view text);

/// Writes all of `text` to standard error, as far as that goes.
void write_error(std::string_view text);

/// Whether standard output is a screen on which colours are wanted (NO_COLOR is obeyed:
/// https://no-color.org).
bool colour_wanted();

}  // namespace heelrule

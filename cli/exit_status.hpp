// What the command tells the shell.
#pragma once

namespace heelrule {

/// Exit statuses: 0 and 1 are answers, the others are those of BSD's sysexits.
enum class ExitStatus : int {
  done = 0,
  answer_is_no = 1,  ///< done, and the answer is no: faults found, a grade not reached
  usage = 64,        ///< the command was not understood
  bad_data = 65,     ///< a file is not as it should be
  input_missing = 66,
  own_fault = 70,  ///< a fault of heelrule itself
  cannot_write = 73,
  io_error = 74,
};

}  // namespace heelrule

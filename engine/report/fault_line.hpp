// What is wrong with one record of many, in the place of its verdict.
#pragma once

#include <string>

#include "engine/reading/line_fault.hpp"

namespace heelrule {

/// A line of JSON: `{"format":"heelrule error","version":1,"errors":[…]}`, each error with
/// its column, what is wrong, and what to do. The line's number is not in it: the line stands where
/// the record stood, also where a long input was cut into pieces.
std::string fault_line(const LineFault& fault);

/// All faults of a record in one sentence after the other, for a cell of a table.
std::string fault_words(const LineFault& fault);

}  // namespace heelrule

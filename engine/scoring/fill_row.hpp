// From a recorded inspection to the inputs of one row.
#pragma once

#include "engine/model/inspection_row.hpp"
#include "engine/scoring/block.hpp"

namespace heelrule {

/// Writes what `inspection` recorded into the input columns of a row; what it did not is *not
/// seen*. Repeats count as their mean. The inspection was read against `program.rules`.
void fill_row(const Program& program, const Inspection& inspection, Block& block, std::size_t row);

/// The same from a row of a batch.
void fill_row(const Program& program, const InspectionRow& values, Block& block, std::size_t row);

/// The number that a facet of a value comes to; *not seen* where the value does not have it (a
/// marked size whose conversion is not known).
double number_of(const Value& value, const Input& input);

}  // namespace heelrule

// The formulas behind the size tables, for those who ask how a size came about.
#pragma once

#include <optional>
#include <string>

#include "engine/quantity/millimetres.hpp"
#include "engine/quantity/size_conversion.hpp"
#include "engine/quantity/size_system.hpp"

namespace heelrule {

/// The size by the formula that goes with the table, not rounded: 3 · foot length in inches - 23
/// for UK, one more for US men, two more for US women (ISO 19407). None where the system has no
/// formula, or none that agrees with its table.
std::optional<double> size_by_formula(SizeSystem system, Millimetres foot, Wearer wearer);

/// How `size_for` came to its answer, in a sentence without a full stop; its problem where there is
/// none.
///
///     EU = 1.5 · foot length in cm + 2 = 38.75: EU 38.5
///     UK = 3 · foot length in inches - 23 = 5.94; by the table of ISO 19407: UK 6
///     MP = foot length in mm, to the nearest 5 mm: MP 245
std::string explain_size(SizeSystem system, Millimetres foot, Wearer wearer);

/// The reason alone, for a place where the size stands beside it; empty where there is no size.
///
///     3 · foot length in inches - 23 = 5.94; by the table of ISO 19407
std::string size_reason(SizeSystem system, Millimetres foot, Wearer wearer);

}  // namespace heelrule

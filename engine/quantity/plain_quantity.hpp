// Readings written in the plainest way, read without looking any closer.
#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/unit.hpp"

namespace heelrule {

/// The stored value of digits, perhaps with a point and more digits, a blank or none, and the
/// symbol of `unit`: what nearly every reading of a large batch is. The same number to the last bit
/// as `parse_quantity` gives. Nothing for every other text, sound or not: then `parse_quantity` is
/// to be asked.
///
///     plain_quantity("243.5 mm", Unit::millimetre)  ->  243.5
///     plain_quantity("9.6 in", Unit::millimetre)    ->  nothing
std::optional<double> plain_quantity(std::string_view text, Unit unit);

}  // namespace heelrule

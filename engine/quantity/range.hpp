// What lies in a range, and the range in words.
#pragma once

#include <string>

#include "engine/quantity/quantity.hpp"

namespace heelrule {

/// Whether a stored value lies in a range, ends included.
bool holds(const QuantityRange& range, double stored);

/// Both ends in `unit` with its symbol, `places` decimals at most: `80 mm to 340 mm`.
std::string show(const QuantityRange& range, Unit unit, int places);

/// The same with the decimals that are worth printing for the unit.
std::string show(const QuantityRange& range, Unit unit);

}  // namespace heelrule

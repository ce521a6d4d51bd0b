// A share of a whole, as a person writes it: `12.5 %`.
#pragma once

#include <string_view>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// Reads a percentage from 0 to 100 as a number from 0 to 1. `0` may go without its sign; every
/// other number needs it.
///
///     parse_share("12.5 %")  ->  0.125
///     parse_share("0.1")     ->  problem "`0.1` is no percentage",
///                                hint "write a percentage, `0 %` to `100 %`"
Parsed<double> parse_share(std::string_view text);

}  // namespace heelrule

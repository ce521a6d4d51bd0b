// Decimal numbers as people write them, kept exactly until they become a double.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"

namespace heelrule {

/// A decimal number: digits · 10^exponent. Exact; at most 15 significant digits.
struct Decimal {
  bool negative = false;
  std::uint64_t digits = 0;  ///< below 10^15
  int exponent = 0;          ///< -15..0

  bool operator==(const Decimal&) const = default;
};

/// Reads a whole text as a decimal number: digits, optionally a point and more digits, optionally a
/// minus sign in front. There is one way to write each number: no exponent, no leading zero, no
/// decimal comma, no `nan` and no `inf`; each of these is a problem with a hint.
///
///     parse_decimal("24.30")  ->  2430 · 10^-2
///     parse_decimal("24,3")   ->  problem "`24,3` is not a number",
///                                 hint "write a decimal point: `24.3`"
Parsed<Decimal> parse_decimal(std::string_view text);

/// The double nearest to `number` · `factor` · 10^`shift`, rounded once. So 0.29 m, 29 cm and 290
/// mm are the same double, which `0.29 * 1000` would not promise.
double scaled(const Decimal& number, std::uint32_t factor = 1, int shift = 0);

/// The shortest text that reads back as the same double; no exponent between 1e-6 and 1e15.
std::string shortest(double value);

/// Appends what `shortest` gives.
void append_shortest(std::string& text, double value);

/// `value` with `places` decimals (0..9), zeros at the end taken off: 243.0 is `243`; never `-0`.
std::string with_places(double value, int places);

}  // namespace heelrule

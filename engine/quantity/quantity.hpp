// A value with its unit, as a person writes it: `243 mm`, `7°`, `50 %`.
#pragma once

#include <string>
#include <string_view>

#include "engine/quantity/parsed.hpp"
#include "engine/quantity/unit.hpp"

namespace heelrule {

/// A reading. Finite; `stored` is in the stored unit of its dimension (see UnitFacts).
struct Quantity {
  double stored = 0;
  Unit unit = Unit::count;  ///< the unit in which it was written

  bool operator==(const Quantity&) const = default;
};

/// From one quantity to another of the same dimension, ends included.
struct QuantityRange {
  Quantity from;
  Quantity to;

  bool operator==(const QuantityRange&) const = default;
};

/// Reads a number followed by a unit; the blank between them may be left out. A bare number has the
/// unit `count`: whether that is wanted is for the caller to say (see `accepts`).
///
///     parse_quantity("9.6 in")  ->  243.84 (stored in mm), Unit::inch
///     parse_quantity("9.6 im")  ->  problem "`im` is no unit known here", hint "did you mean
///     `in`?"
Parsed<Quantity> parse_quantity(std::string_view text);

/// Reads `80 mm .. 340 mm`. Both ends need the same dimension, and the first may not exceed the
/// second.
Parsed<QuantityRange> parse_range(std::string_view text);

/// That no unit is spelt so, with the nearest that is; where none is near, with `samples`.
///
///     unknown_unit("im", "`mm` or `g`")  ->  problem "`im` is no unit known here",
///                                            hint "did you mean `in`?"
Problem unknown_unit(std::string_view spelling, std::string_view samples);

/// Whether a quantity written in `written` can stand where `wanted` is due: the same dimension, and
/// a percentage for a percentage, a bare number for a count. The problem is empty if it can.
Problem accepts(Unit wanted, Unit written, std::string_view text);

/// Reads a quantity that is written in a unit which can stand where `wanted` is due.
///
///     parse_quantity_in("24.3 cm", Unit::millimetre)  ->  243 (stored in mm), Unit::centimetre
///     parse_quantity_in("7°", Unit::millimetre)       ->  problem "`7°` is an angle, and a length
///                                                         is due here"
Parsed<Quantity> parse_quantity_in(std::string_view text, Unit wanted);

/// A stored value in `unit` with its symbol, `places` decimals at most: `243.5 mm`, `7°`, `12`,
/// `1 month`.
std::string show(double stored, Unit unit, int places);

/// The same with the decimals that are worth printing for the unit.
std::string show(double stored, Unit unit);

}  // namespace heelrule

// Units of measure: their symbols, their dimensions, and how to turn them into the stored unit.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace heelrule {

/// Exponents of the base dimensions. A force is a base of its own here: nobody at the bench
/// multiplies a mass by an acceleration. A percentage and a count have no dimension.
struct Dimension {
  std::int8_t length = 0;
  std::int8_t angle = 0;
  std::int8_t mass = 0;
  std::int8_t force = 0;
  std::int8_t time = 0;

  bool operator==(const Dimension&) const = default;

  friend Dimension operator*(Dimension a, Dimension b);
  friend Dimension operator/(Dimension a, Dimension b);
};

/// Every unit that a reading may be written in.
enum class Unit : std::uint8_t {
  count,
  percent,
  millimetre,
  centimetre,
  metre,
  inch,
  degree,
  gram,
  kilogram,
  newton,
  newton_metre_per_degree,
  second,
  minute,
  hour,
  day,
  week,
  month,
  year,
};

/// What is known of a unit. Values are stored in mm, °, g, N, N·mm/°, s, or as a plain number:
/// stored = written · factor · 10^shift.
struct UnitFacts {
  std::string_view symbol;  ///< as printed; empty for a count
  std::string_view kind;    ///< what it measures, in words: `length`
  std::string_view sample;  ///< a reading as one would write it, for hints: `243 mm`
  Dimension dimension;
  std::uint32_t factor;
  int shift;
  int places;  ///< decimals that are worth printing
};

/// The facts of `unit`. An inch is 25.4 mm exactly (international yard and pound agreement, 1959);
/// a year is 365.25 days and a month a twelfth of it (Julian year, as in the IAU's system of
/// units).
const UnitFacts& facts(Unit unit);

/// The unit with this symbol or one of its other spellings (`Nm/deg`, `deg`, `years`), if there is
/// one.
std::optional<Unit> find_unit(std::string_view spelling);

/// A stored value expressed in `unit`.
double in_unit(double stored, Unit unit);

/// The unit in which a derived value of this dimension is printed, if it has a name: length mm,
/// angle °, mass g, force N, bending stiffness N·m/°, time days; a number without dimension is a
/// count.
std::optional<Unit> usual_unit(Dimension dimension);

/// A dimension in words, for messages: `length`, `length²`, `length·force/angle`, `number`.
std::string in_words(Dimension dimension);

/// All spellings that `find_unit` knows, for suggestions.
std::string_view unit_spelling(std::size_t index);
std::size_t unit_spelling_count();

}  // namespace heelrule

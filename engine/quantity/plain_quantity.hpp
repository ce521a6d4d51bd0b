// Readings written in the plainest way, read without looking any closer.
#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/unit.hpp"

namespace heelrule {

/// The stored value of digits, perhaps with a point and more digits, a blank or none, and `symbol`;
/// `unit` says how to turn it into the stored unit. Nothing for every other text. It stands here in
/// whole because nearly every value of a large batch goes through it.
inline std::optional<double> plain_quantity(std::string_view text, const UnitFacts& unit,
                                            std::string_view symbol) {
  constexpr std::size_t most_digits = 15;
  Decimal number;
  std::size_t at = 0;
  const auto take_digits = [&] {
    const std::size_t begin = at;
    while (at < text.size() && text[at] >= '0' && text[at] <= '9') {
      number.digits = number.digits * 10 + static_cast<std::uint64_t>(text[at] - '0');
      ++at;
    }
    return at - begin;
  };
  const std::size_t before_point = take_digits();
  if (before_point == 0 || (text[0] == '0' && before_point > 1)) {
    return std::nullopt;
  }
  if (at < text.size() && text[at] == '.') {
    ++at;
    const std::size_t decimals = take_digits();
    if (decimals == 0) {
      return std::nullopt;
    }
    number.exponent = -static_cast<int>(decimals);
  }
  if (at > most_digits) {
    return std::nullopt;
  }
  if (at < text.size() && text[at] == ' ' && !symbol.empty()) {
    ++at;
  }
  if (text.size() - at != symbol.size()) {
    return std::nullopt;
  }
  // A symbol is shorter than the call that would compare it.
  for (std::size_t i = 0; i < symbol.size(); ++i) {
    if (text[at + i] != symbol[i]) {
      return std::nullopt;
    }
  }
  return scaled(number, unit.factor, unit.shift);
}

/// A number with the symbol of `unit`: the same to the last bit as `parse_quantity` gives. Where
/// there is nothing, sound or not, `parse_quantity` is to be asked.
///
///     plain_quantity("243.5 mm", Unit::millimetre)  ->  243.5
///     plain_quantity("9.6 in", Unit::millimetre)    ->  nothing
inline std::optional<double> plain_quantity(std::string_view text, Unit unit) {
  return plain_quantity(text, facts(unit), facts(unit).symbol);
}

/// The same of a number alone, where its unit is said elsewhere: `243.5`.
inline std::optional<double> plain_quantity_without_symbol(std::string_view text, Unit unit) {
  return plain_quantity(text, facts(unit), {});
}

}  // namespace heelrule

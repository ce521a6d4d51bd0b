#include "engine/quantity/plain_quantity.hpp"

#include "engine/quantity/decimal.hpp"

namespace heelrule {
namespace {

constexpr std::size_t most_digits = 15;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

std::optional<double> plain_quantity(std::string_view text, Unit unit) {
  Decimal number;
  std::size_t at = 0;
  const auto take_digits = [&] {
    const std::size_t begin = at;
    while (at < text.size() && is_digit(text[at])) {
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
  const UnitFacts& known = facts(unit);
  if (at < text.size() && text[at] == ' ' && !known.symbol.empty()) {
    ++at;
  }
  if (text.substr(at) != known.symbol) {
    return std::nullopt;
  }
  return scaled(number, known.factor, known.shift);
}

}  // namespace heelrule

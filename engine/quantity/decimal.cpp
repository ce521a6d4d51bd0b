#include "engine/quantity/decimal.hpp"

#include <fast_float/fast_float.h>
#include <fmt/format.h>

#include <array>
#include <cmath>

namespace heelrule {
namespace {

constexpr std::size_t most_digits = 15;

// Powers of ten that a double holds exactly.
constexpr std::array<double, 23> exact_powers{1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                              1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                              1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

Problem not_a_number(std::string_view text, std::string hint) {
  return {fmt::format("`{}` is not a number", text), std::move(hint)};
}

constexpr std::string_view usual_hint = "write digits, with a point where decimals follow: `24.3`";

// A comma between digits is how much of the world writes the decimal point.
Problem comma_problem(std::string_view text) {
  std::string mended(text);
  mended[mended.find(',')] = '.';
  return not_a_number(text, parse_decimal(mended)
                                ? fmt::format("write a decimal point: `{}`", mended)
                                : std::string(usual_hint));
}

Problem no_digit_in_front(std::string_view text, bool negative, std::string_view rest) {
  const std::string mended = fmt::format("{}0{}", negative ? "-" : "", rest);
  return not_a_number(text, rest.starts_with('.') && parse_decimal(mended)
                                ? fmt::format("write a digit before the point: `{}`", mended)
                                : std::string(usual_hint));
}

}  // namespace

Parsed<Decimal> parse_decimal(std::string_view text) {
  std::string_view rest = text;
  Decimal number;
  if (!rest.empty() && rest.front() == '-') {
    number.negative = true;
    rest.remove_prefix(1);
  }
  if (rest.empty() || !is_digit(rest.front())) {
    return no_digit_in_front(text, number.negative, rest);
  }
  std::size_t significant = 0;
  bool after_point = false;
  for (std::size_t at = 0; at < rest.size(); ++at) {
    const char c = rest[at];
    if (c == '.' && !after_point && at + 1 < rest.size()) {
      after_point = true;
      continue;
    }
    if (c == ',') {
      return comma_problem(text);
    }
    if (!is_digit(c)) {
      return not_a_number(text, std::string(usual_hint));
    }
    if (at == 1 && rest.front() == '0' && !after_point) {
      return not_a_number(text, "leave the zero in front out");
    }
    significant += (significant > 0 || c != '0') ? 1 : 0;
    if (significant > most_digits || (after_point && number.exponent <= -15)) {
      return Problem{fmt::format("`{}` has more digits than can be kept", text),
                     fmt::format("write at most {} digits", most_digits)};
    }
    number.digits = number.digits * 10 + static_cast<std::uint64_t>(c - '0');
    number.exponent -= after_point ? 1 : 0;
  }
  return number;
}

double scaled(const Decimal& number, std::uint32_t factor, int shift) {
  // A whole number below 2^53 over a power of ten up to 10^22 is two exact doubles and one rounding
  // (Clinger 1990).
  const int places = -(number.exponent + shift);
  if (number.digits < (std::uint64_t{1} << 53U) / factor && places >= 0 &&
      places < static_cast<int>(exact_powers.size())) {
    const double value = static_cast<double>(number.digits * factor) /
                         exact_powers[static_cast<std::size_t>(places)];
    return number.negative && value != 0 ? -value : value;
  }
  // The product has up to 25 digits, so it is formed as text and rounded once by the parser.
  std::array<char, 48> buffer{};
  const std::uint64_t low = (number.digits % 1'000'000'000U) * factor;
  const std::uint64_t high = (number.digits / 1'000'000'000U) * factor + low / 1'000'000'000U;
  const auto end = fmt::format_to_n(buffer.data(), buffer.size(), "{}{:09}e{}", high,
                                    low % 1'000'000'000U, number.exponent + shift);
  double value = 0;
  fast_float::from_chars(buffer.data(), buffer.data() + end.size, value);
  return number.negative && value != 0 ? -value : value;
}

std::string shortest(double value) {
  std::string text = fmt::format("{}", value);
  const std::size_t exponent = text.find("e-0");
  if (exponent != std::string::npos && std::fabs(value) >= 1e-6) {
    // From 1e-6 to 1e-4 the digits are kept, and zeros are put in front of them.
    const int zeros = text[exponent + 3] - '0' - 1;
    std::string digits = text.substr(0, exponent);
    std::erase(digits, '.');
    const std::size_t sign = digits.front() == '-' ? 1 : 0;
    return digits.insert(sign, "0." + std::string(static_cast<std::size_t>(zeros), '0'));
  }
  return text == "-0" ? "0" : text;
}

std::string with_places(double value, int places) {
  std::string text = fmt::format("{:.{}f}", value, places);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') {
      text.pop_back();
    }
  }
  return text == "-0" ? "0" : text;
}

}  // namespace heelrule

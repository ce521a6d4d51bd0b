#include "engine/quantity/decimal.hpp"

#include <fast_float/fast_float.h>
#include <fmt/compile.h>
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

// digits · 10^-places. Precondition: the last digit is no 0 unless there are no places.
void append_decimal(std::string& text, bool negative, std::uint64_t digits, std::size_t places) {
  std::array<char, 24> buffer{};
  std::size_t at = buffer.size();
  std::size_t written = 0;
  do {
    if (written == places && places > 0) {
      buffer[--at] = '.';
    }
    buffer[--at] = static_cast<char>('0' + digits % 10);
    digits /= 10;
    ++written;
  } while (digits > 0 || written <= places);
  if (negative) {
    buffer[--at] = '-';
  }
  text.append(buffer.data() + at, buffer.size() - at);
}

// What is written with an exponent of -5 or -6, with zeros in front instead.
void append_small(std::string& text, std::string_view written) {
  const std::size_t exponent = written.find("e-0");
  const int zeros = written[exponent + 3] - '0' - 1;
  if (written.front() == '-') {
    text += '-';
  }
  text += "0.";
  text.append(static_cast<std::size_t>(zeros), '0');
  for (const char c : written.substr(0, exponent)) {
    if (c != '.' && c != '-') {
      text += c;
    }
  }
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
  std::string text;
  append_shortest(text, value);
  return text;
}

void append_shortest(std::string& text, double value) {
  // A decimal of at most 15 digits that reads back as `value` is the shortest one, for no two of
  // them read back as the same double.
  constexpr std::size_t most_places = 3;
  const double size = std::fabs(value);
  if (size < 1e11) {
    auto digits = static_cast<std::uint64_t>(std::llround(size * exact_powers[most_places]));
    if (static_cast<double>(digits) / exact_powers[most_places] == size) {
      std::size_t places = most_places;
      for (; places > 0 && digits % 10 == 0; --places) {
        digits /= 10;
      }
      append_decimal(text, value < 0, digits, places);
      return;
    }
  }
  std::array<char, 32> buffer{};
  const char* end = fmt::format_to(buffer.data(), FMT_COMPILE("{}"), value);
  const std::string_view written(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
  if (size < 1e-4 && size >= 1e-6) {
    append_small(text, written);
  } else {
    text += written;
  }
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

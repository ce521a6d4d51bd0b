#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/shoe_size.hpp"
#include "engine/quantity/trimmed.hpp"

namespace heelrule {
namespace {

constexpr std::string_view half_sign = "½";
constexpr double shortest_mondopoint = 80;

// A size as written, in its pieces: `JP`, `25.0`, `EE`.
struct WrittenSize {
  std::string_view mark;
  std::string_view number;
  std::string_view rest;
};

struct WrittenNumber {
  double value = 0;
  bool has_decimals = false;
};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool starts_number(std::string_view text) {
  const bool signed_number = text.size() > 1 && text[0] == '-' && is_digit(text[1]);
  return is_digit(text[0]) || text[0] == '.' || text[0] == ',' || signed_number ||
         text.starts_with(half_sign);
}

WrittenSize split(std::string_view text) {
  std::size_t begin = 0;
  while (begin < text.size() && !starts_number(text.substr(begin))) {
    ++begin;
  }
  std::size_t end = begin;
  while (end < text.size() &&
         (is_digit(text[end]) || text[end] == '.' || text[end] == ',' || text[end] == '-')) {
    ++end;
  }
  const std::string_view behind = trimmed(text.substr(end));
  if (behind.starts_with(half_sign)) {
    end = text.find(half_sign, end) + half_sign.size();
  }
  return {trimmed(text.substr(0, begin)), text.substr(begin, end - begin),
          trimmed(text.substr(end))};
}

Parsed<WrittenNumber> parse_number(std::string_view text) {
  if (!text.ends_with(half_sign)) {
    const auto number = parse_decimal(text);
    if (!number) {
      return number.problem();
    }
    return WrittenNumber{scaled(*number), number->exponent < 0};
  }
  const std::string_view whole = trimmed(text.substr(0, text.size() - half_sign.size()));
  if (whole.empty()) {
    return WrittenNumber{0.5, true};
  }
  const auto number = parse_decimal(whole);
  if (!number) {
    return number.problem();
  }
  if (number->exponent < 0 || number->negative) {
    return Problem{fmt::format("`{}` is not a number", text), "write a half as `6.5` or `6½`"};
  }
  return WrittenNumber{scaled(*number) + 0.5, true};
}

// Before lengths in mm, China counted in a code of its own, with length in cm = (code + 10) / 2.
Problem old_chinese_code(double number) {
  constexpr double longest_likely_foot_in_cm = 32;
  const double by_code = (number + 10) * 5;
  if (number > longest_likely_foot_in_cm) {
    return {fmt::format("`CN {}` is in the old code", number),
            fmt::format("write the length in mm: `CN {}`", by_code)};
  }
  return {fmt::format("`CN {}` may be centimetres or the old code", number),
          fmt::format("write `CN {}` for {} cm, or `CN {}` for the old code", number * 10, number,
                      by_code)};
}

Parsed<ShoeSize> chinese_size(WrittenNumber number) {
  if (number.has_decimals && number.value < shortest_mondopoint) {
    return shoe_size(SizeSystem::chinese, number.value * 10);
  }
  if (number.value >= 10 && number.value <= 60) {
    return old_chinese_code(number.value);
  }
  return shoe_size(SizeSystem::chinese, number.value);
}

Problem no_system(const WrittenSize& written) {
  if (parse_size_system(written.rest, written.number)) {
    return {fmt::format("`{} {}` has its system behind the number", written.number, written.rest),
            fmt::format("write `{} {}`", written.rest, written.number)};
  }
  if (find_girth_code(written.rest)) {
    return {fmt::format("`{} {}` does not say in which system it is", written.number, written.rest),
            fmt::format("write `JP {} {}`", written.number, written.rest)};
  }
  return parse_size_system("", written.number).problem();
}

Parsed<ShoeSize> with_rest(const ShoeSize& size, std::string_view rest) {
  if (rest.empty()) {
    return size;
  }
  if (rest.front() == '/') {
    const auto width = parse_decimal(trimmed(rest.substr(1)));
    if (!width) {
      return width.problem();
    }
    return with_width(size, Millimetres(scaled(*width)));
  }
  if (const auto code = find_girth_code(rest)) {
    return with_girth_code(size, *code);
  }
  return Problem{fmt::format("`{}` behind `{}` is not understood", rest, show(size)),
                 is_digit(rest.front()) ? "write a half as `39.5` or `39½`"
                                        : fmt::format("write `{}` alone", show(size))};
}

}  // namespace

Parsed<ShoeSize> parse_shoe_size(std::string_view text) {
  const WrittenSize written = split(trimmed(text));
  if (written.number.empty()) {
    return Problem{fmt::format("`{}` is no shoe size", trimmed(text)),
                   "write the system and the number: `EU 39.5`, `UK 6½`, `US W 8.5`, `JP 25.0 EE`, "
                   "`MP 245/95`"};
  }
  const auto number = parse_number(written.number);
  if (!number) {
    return number.problem();
  }
  const bool bare_length = written.mark.empty() && number->value >= shortest_mondopoint;
  if (written.mark.empty() && !bare_length) {
    return no_system(written);
  }
  const auto system =
      bare_length ? SizeSystem::mondopoint : parse_size_system(written.mark, written.number);
  if (!system) {
    return system.problem();
  }
  const auto size =
      *system == SizeSystem::chinese ? chinese_size(*number) : shoe_size(*system, number->value);
  if (!size) {
    return size.problem();
  }
  return with_rest(*size, written.rest);
}

}  // namespace heelrule

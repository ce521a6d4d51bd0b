#include "engine/quantity/sock_range.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/size_conversion.hpp"
#include "engine/quantity/trimmed.hpp"

namespace heelrule {
namespace {

constexpr std::string_view half_sign = "½";
constexpr std::string_view long_dash = "–";
constexpr double shortest_sock = 50;
constexpr double longest_sock = 400;
constexpr double inch = 25.4;
constexpr double centimetre = 10;

// A range as written, in its pieces: `UK`, `6`, `8½`, and behind them a unit.
struct WrittenRange {
  std::string_view mark;
  std::string_view from;
  bool has_dash = false;
  std::string_view to;
  std::string_view unit;
};

bool is_digit(char c) { return c >= '0' && c <= '9'; }

std::size_t number_length(std::string_view text) {
  std::size_t end = 0;
  while (end < text.size() && (is_digit(text[end]) || text[end] == '.' || text[end] == ',')) {
    ++end;
  }
  return text.substr(end).starts_with(half_sign) ? end + half_sign.size() : end;
}

std::size_t dash_length(std::string_view text) {
  return text.starts_with('-') ? 1 : text.starts_with(long_dash) ? long_dash.size() : 0;
}

WrittenRange split(std::string_view text) {
  WrittenRange written;
  std::size_t begin = 0;
  while (begin < text.size() && number_length(text.substr(begin)) == 0) {
    ++begin;
  }
  written.mark = trimmed(text.substr(0, begin));
  text.remove_prefix(begin);
  written.from = text.substr(0, number_length(text));
  text = trimmed(text.substr(written.from.size()));
  if (const std::size_t dash = dash_length(text)) {
    written.has_dash = true;
    text = trimmed(text.substr(dash));
    written.to = text.substr(0, number_length(text));
    text = trimmed(text.substr(written.to.size()));
  }
  written.unit = text;
  return written;
}

Problem no_range(std::string_view text) {
  return {fmt::format("`{}` is no sock range", text),
          "write it as marked: `EU 39-42`, `UK 6-8½`, `24-26 cm`, `sock 25`"};
}

Problem downward(std::string_view text) {
  return {fmt::format("the range `{}` runs downward", text), "write the smaller end first"};
}

Parsed<SockRange> metric_sock_number(const WrittenRange& written, std::string_view text) {
  if (!written.to.empty()) {
    return Problem{
        fmt::format("`{}` is more than one sock number", text),
        fmt::format("write foot lengths with their unit: `{}-{} cm`", written.from, written.to)};
  }
  const auto number = parse_decimal(written.from);
  if (!number) {
    return number.problem();
  }
  constexpr std::uint64_t smallest = 10;
  constexpr std::uint64_t largest = 33;
  if (number->exponent != 0 || number->digits < smallest || number->digits > largest) {
    return Problem{
        fmt::format("`{}` is no sock number", text),
        fmt::format("sock numbers are foot lengths in whole cm, {} to {}", smallest, largest)};
  }
  return SockRange(MetricSockNumber{static_cast<int>(number->digits)});
}

Parsed<SockRange> traditional_numbers(const WrittenRange& written, std::string_view text) {
  const auto from = parse_decimal(written.from);
  const auto to = parse_decimal(written.to);
  if (!from || !to) {
    return from ? to.problem() : from.problem();
  }
  const TraditionalSockNumbers numbers{scaled(*from), scaled(*to)};
  if (numbers.from > numbers.to) {
    return downward(text);
  }
  constexpr double smallest = 3;
  constexpr double largest = 16;
  if (numbers.from < smallest || numbers.to > largest) {
    return Problem{
        fmt::format("`{}` is out of range", text),
        fmt::format("American sock numbers are about the foot length in inches, {} to {}", smallest,
                    largest)};
  }
  return SockRange(numbers);
}

Parsed<SockRange> lengths(const WrittenRange& written, std::string_view text) {
  const auto from = parse_quantity(fmt::format("{} {}", written.from, written.unit));
  const auto to = parse_quantity(fmt::format("{} {}", written.to, written.unit));
  if (!from || !to) {
    return from ? to.problem() : from.problem();
  }
  if (facts(from->unit).dimension != facts(Unit::millimetre).dimension) {
    return Problem{fmt::format("`{}` is no range of foot lengths", text),
                   "write lengths: `24-26 cm`"};
  }
  if (from->stored > to->stored) {
    return downward(text);
  }
  if (from->stored < shortest_sock || to->stored > longest_sock) {
    return Problem{
        fmt::format("no sock is made for feet of {}", text),
        fmt::format("foot lengths run from {} mm to {} mm", shortest_sock, longest_sock)};
  }
  return SockRange(QuantityRange{*from, *to});
}

// Where the second number is the smaller one, it belongs to the run of numbers after the
// children's.
std::string_view mark_of_second(const ShoeSize& from, std::string_view mark, bool numbers_fall) {
  if (numbers_fall && from.system() == SizeSystem::british_child) {
    return "UK";
  }
  if (numbers_fall && from.system() == SizeSystem::american_child) {
    return "US youth";
  }
  return mark;
}

Parsed<SockRange> shoe_sizes(const WrittenRange& written, std::string_view text) {
  const auto from = parse_shoe_size(fmt::format("{} {}", written.mark, written.from));
  if (!from) {
    return from.problem();
  }
  if (!written.has_dash && written.unit.empty()) {
    return Problem{fmt::format("`{}` is a single size, and socks are marked with a range", text),
                   "write both ends as marked: `EU 39-42`"};
  }
  if (written.to.empty() || !written.unit.empty()) {
    return no_range(text);
  }
  const auto same_run = parse_shoe_size(fmt::format("{} {}", written.mark, written.to));
  const bool falls = same_run && same_run->halves() < from->halves();
  const std::string_view mark = mark_of_second(*from, written.mark, falls);
  const auto to = parse_shoe_size(fmt::format("{} {}", mark, written.to));
  if (!to) {
    return to.problem();
  }
  if (to->system() == from->system() && falls) {
    return downward(text);
  }
  return SockRange(ShoeSizeSpan{*from, *to});
}

std::string show_length(const Quantity& length) {
  return with_places(in_unit(length.stored, length.unit), 4);
}

Parsed<FootRange> feet_of_span(const ShoeSizeSpan& span) {
  const auto from = nominal_foot(span.from, usual_wearer(span.from));
  const auto to = nominal_foot(span.to, usual_wearer(span.to));
  if (!from || !to) {
    return from ? to.problem() : from.problem();
  }
  return FootRange{*from, *to};
}

}  // namespace

Parsed<SockRange> parse_sock_range(std::string_view text) {
  const std::string_view all = trimmed(text);
  const WrittenRange written = split(all);
  if (written.from.empty()) {
    return no_range(all);
  }
  if (written.mark == "sock" && written.unit.empty()) {
    return metric_sock_number(written, all);
  }
  if (written.mark == "US sock" && written.unit.empty() && !written.to.empty()) {
    return traditional_numbers(written, all);
  }
  if (!written.mark.empty()) {
    return shoe_sizes(written, all);
  }
  if (written.unit.empty()) {
    return Problem{fmt::format("`{}` does not say in which system it is", all),
                   written.to.empty() ? "write what it is: `sock 25`, `EU 39-42`, `24-26 cm`"
                                      : "write the system or the unit: `EU 39-42`, `24-26 cm`"};
  }
  return written.to.empty() ? no_range(all) : lengths(written, all);
}

std::string show(const SockRange& range) {
  if (const auto* sizes = std::get_if<ShoeSizeSpan>(&range)) {
    return fmt::format("{}-{}", show(sizes->from), show_number(sizes->to));
  }
  if (const auto* lengths = std::get_if<QuantityRange>(&range)) {
    return fmt::format("{}-{} {}", show_length(lengths->from), show_length(lengths->to),
                       facts(lengths->from.unit).symbol);
  }
  if (const auto* sock = std::get_if<MetricSockNumber>(&range)) {
    return fmt::format("sock {}", sock->number);
  }
  const auto* numbers = std::get_if<TraditionalSockNumbers>(&range);
  return fmt::format("US sock {}-{}", shortest(numbers->from), shortest(numbers->to));
}

Parsed<FootRange> feet_of(const SockRange& range) {
  if (const auto* sizes = std::get_if<ShoeSizeSpan>(&range)) {
    return feet_of_span(*sizes);
  }
  if (const auto* lengths = std::get_if<QuantityRange>(&range)) {
    return FootRange{Millimetres(lengths->from.stored), Millimetres(lengths->to.stored)};
  }
  if (const auto* sock = std::get_if<MetricSockNumber>(&range)) {
    return FootRange{Millimetres((sock->number - 1) * centimetre),
                     Millimetres((sock->number + 1) * centimetre)};
  }
  const auto* numbers = std::get_if<TraditionalSockNumbers>(&range);
  return FootRange{Millimetres(numbers->from * inch), Millimetres(numbers->to * inch)};
}

std::optional<Millimetres> shortest_foot(const SockRange& range) {
  const auto feet = feet_of(range);
  return feet ? std::optional(feet->shortest) : std::nullopt;
}

std::optional<Millimetres> longest_foot(const SockRange& range) {
  const auto feet = feet_of(range);
  return feet ? std::optional(feet->longest) : std::nullopt;
}

}  // namespace heelrule

#include "engine/quantity/quantity.hpp"

#include <fmt/format.h>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/quantity/trimmed.hpp"

namespace heelrule {
namespace {

bool may_stand_in_a_number(char c) {
  return (c >= '0' && c <= '9') || c == '.' || c == ',' || c == '-';
}

std::string with_article(std::string_view kind) {
  return fmt::format("{} {}", kind.starts_with('a') ? "an" : "a", kind);
}

}  // namespace

Problem unknown_unit(std::string_view spelling, std::string_view samples) {
  Nearest nearest(spelling);
  for (std::size_t i = 0; i < unit_spelling_count(); ++i) {
    nearest.offer(unit_spelling(i));
  }
  return {fmt::format("`{}` is no unit known here", spelling),
          nearest.found() ? nearest.question() : fmt::format("write a unit such as {}", samples)};
}

Parsed<Quantity> parse_quantity(std::string_view text) {
  const std::string_view all = trimmed(text);
  std::size_t split = 0;
  while (split < all.size() && may_stand_in_a_number(all[split])) {
    ++split;
  }
  const bool has_digit = all.find_first_of("0123456789") < split;
  const auto number = parse_decimal(has_digit ? all.substr(0, split) : all);
  if (!number) {
    return number.problem();
  }
  const std::string_view symbol = trimmed(all.substr(split));
  const auto unit = symbol.empty() ? Unit::count : find_unit(symbol);
  if (!unit) {
    return unknown_unit(symbol, "`mm`, `cm`, `°`, `g` or `%`");
  }
  return Quantity{scaled(*number, facts(*unit).factor, facts(*unit).shift), *unit};
}

Parsed<QuantityRange> parse_range(std::string_view text) {
  const std::size_t dots = text.find("..");
  if (dots == std::string_view::npos) {
    return Problem{fmt::format("`{}` is no range", text),
                   "write both ends with two dots between them: `80 mm .. 340 mm`"};
  }
  const auto from = parse_quantity(text.substr(0, dots));
  if (!from) {
    return from.problem();
  }
  const auto to = parse_quantity(text.substr(dots + 2));
  if (!to) {
    return to.problem();
  }
  if (facts(from->unit).dimension != facts(to->unit).dimension) {
    return Problem{fmt::format("the ends of `{}` are of different kinds", text),
                   "write both ends in units of one kind: `80 mm .. 340 mm`"};
  }
  if (from->stored > to->stored) {
    return Problem{fmt::format("the range `{}` runs downward", text),
                   "write the smaller end first"};
  }
  return QuantityRange{*from, *to};
}

Problem accepts(Unit wanted, Unit written, std::string_view text) {
  const UnitFacts& due = facts(wanted);
  const bool percent_for_count = written == Unit::percent && wanted == Unit::count;
  const bool count_for_percent = written == Unit::count && wanted == Unit::percent;
  if (due.dimension == facts(written).dimension && !percent_for_count && !count_for_percent) {
    return {};
  }
  if (written == Unit::count) {
    return {fmt::format("`{}` has no unit, and {} is due here", text, with_article(due.kind)),
            fmt::format("write the unit: `{}{}{}`", text, wanted == Unit::degree ? "" : " ",
                        due.symbol)};
  }
  if (wanted == Unit::count) {
    return {fmt::format("`{}` has a unit, and a bare number is due here", text),
            fmt::format("write a number such as `{}`", due.sample)};
  }
  return {fmt::format("`{}` is {}, and {} is due here", text, with_article(facts(written).kind),
                      with_article(due.kind)),
          fmt::format("write a value such as `{}`", due.sample)};
}

Parsed<Quantity> parse_quantity_in(std::string_view text, Unit wanted) {
  auto quantity = parse_quantity(text);
  if (quantity) {
    if (Problem problem = accepts(wanted, quantity->unit, text); !problem.message.empty()) {
      return problem;
    }
  }
  return quantity;
}

std::string show(double stored, Unit unit, int places) {
  std::string text = with_places(in_unit(stored, unit), places);
  std::string_view symbol = facts(unit).symbol;
  if (symbol.empty()) {
    return text;
  }
  const bool is_plural_word = symbol.size() > 1 && symbol.back() == 's';
  if (is_plural_word && (text == "1" || text == "-1")) {
    symbol.remove_suffix(1);
  }
  return text + (unit == Unit::degree ? "" : " ") + std::string(symbol);
}

std::string show(double stored, Unit unit) { return show(stored, unit, facts(unit).places); }

}  // namespace heelrule

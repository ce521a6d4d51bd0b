// The functions of formulas, for the second evaluator.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/quantity/fibre.hpp"
#include "engine/quantity/size_conversion.hpp"
#include "tests/oracle/naive_reading.hpp"

namespace heelrule {
namespace {

const Fraction seconds_in_a_year(31'557'600);

// The middle column of the table of growth by age, as rules/README.md has it for `monthly_growth`:
// half an English size (127/30 mm) in two months, and so on; 8.5 mm a year from 5 years.
Fraction grown_in_a_month(const Fraction& years) {
  if (years * 4 < 5) {
    return Fraction::ratio(127, 60);
  }
  if (years < 2) {
    return Fraction::ratio(3, 2);
  }
  if (years < 3) {
    return Fraction::ratio(5, 4);
  }
  if (years < 5) {
    return 1;
  }
  return years < 12 ? Fraction::ratio(17, 24) : years < 15 ? Fraction::ratio(17, 48) : Fraction(0);
}

}  // namespace

bool NaiveReading::is_function_of_sides(const std::string& name) {
  return name == "left" || name == "right" || name == "larger" || name == "smaller" ||
         name == "mean_of_sides" || name == "difference";
}

NaiveValue NaiveReading::called(const Syntax& syntax, Side side) const {
  if (is_function_of_sides(syntax.name)) {
    return of_sides(syntax);
  }
  if (syntax.name == "min" || syntax.name == "max" || syntax.name == "mean") {
    return of_many(syntax, side);
  }
  if (syntax.name == "abs" || syntax.name == "tan" || syntax.name == "atan") {
    const NaiveValue a = value_of(syntax.parts[0], side);
    if (!a) {
      return std::nullopt;
    }
    if (syntax.name == "abs") {
      return *a < 0 ? -*a : *a;
    }
    if (syntax.name == "atan") {
      return Fraction::of(std::atan(a->value()) * 180 / std::numbers::pi);
    }
    const Fraction half_turns = (*a - 90) / 180;
    if (half_turns == half_turns.rounded_up(1)) {
      return std::nullopt;
    }
    return Fraction::of(std::tan(a->value() * std::numbers::pi / 180));
  }
  if (syntax.name == "monthly_growth") {
    const NaiveValue age = value_of(syntax.parts[0], side);
    return age ? NaiveValue(grown_in_a_month(age->settled() / seconds_in_a_year)) : std::nullopt;
  }
  return of_marks(syntax, side);
}

NaiveValue NaiveReading::of_sides(const Syntax& syntax) const {
  const NaiveValue left = value_of(syntax.parts[0], Side::left);
  const NaiveValue right = value_of(syntax.parts[0], Side::right);
  if (syntax.name == "left" || syntax.name == "right") {
    return syntax.name == "left" ? left : right;
  }
  if (!left || !right) {
    return std::nullopt;
  }
  const Fraction larger = std::max(*left, *right);
  const Fraction smaller = std::min(*left, *right);
  return syntax.name == "larger"       ? larger
         : syntax.name == "smaller"    ? smaller
         : syntax.name == "difference" ? larger - smaller
                                       : (larger + smaller) / 2;
}

NaiveValue NaiveReading::of_many(const Syntax& syntax, Side side) const {
  std::vector<Fraction> values;
  for (const Syntax& part : syntax.parts) {
    const NaiveValue value = value_of(part, side);
    if (!value) {
      return std::nullopt;
    }
    values.push_back(*value);
  }
  if (syntax.name == "min") {
    return *std::min_element(values.begin(), values.end());
  }
  if (syntax.name == "max") {
    return *std::max_element(values.begin(), values.end());
  }
  Fraction sum;
  for (const Fraction& value : values) {
    sum = sum + value;
  }
  return sum / Fraction(static_cast<std::int64_t>(values.size()));
}

// `share`, `moisture`, `shortest_foot`, `longest_foot`.
NaiveValue NaiveReading::of_marks(const Syntax& syntax, Side side) const {
  const auto index = *rules_.find_trait(syntax.parts[0].name);
  const Observation* seen = inspection_.find(index, has_sides(index) ? side : Side::none);
  if (seen == nullptr || std::holds_alternative<NotSeen>(seen->value)) {
    return std::nullopt;
  }
  if (const auto* content = std::get_if<FibreContent>(&seen->value)) {
    Fraction sum;
    for (const FibreShare& part : content->shares()) {
      const Fraction share = Fraction::of(part.share);
      if (syntax.name == "moisture") {
        sum = sum + share * Fraction::of(agreed_allowance(part.fibre));
      } else if (show(part.fibre) == syntax.parts[1].name) {
        sum = sum + share;
      }
    }
    return sum;
  }
  const bool longest = syntax.name == "longest_foot";
  std::optional<Millimetres> foot;
  if (const auto* shoe = std::get_if<ShoeSize>(&seen->value)) {
    foot = longest ? longest_foot(*shoe) : shortest_foot(*shoe);
  } else if (const auto* sock = std::get_if<SockRange>(&seen->value)) {
    foot = longest ? longest_foot(*sock) : shortest_foot(*sock);
  }
  return foot ? NaiveValue(Fraction::of(foot->value())) : std::nullopt;
}

}  // namespace heelrule

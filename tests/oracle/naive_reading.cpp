#include "tests/oracle/naive_reading.hpp"

#include <algorithm>
#include <stdexcept>

namespace heelrule {
namespace {

Syntax parsed(const Located<std::string>& text) {
  Diagnostics diagnostics;
  auto syntax = parse_formula(text, diagnostics);
  if (!syntax) {
    throw std::logic_error("the formula `" + text.value + "` does not parse");
  }
  return *std::move(syntax);
}

NaiveValue yes_or_no(bool yes) { return Fraction(yes ? 1 : 0); }

}  // namespace

bool NaiveReading::has_sides(std::size_t trait) const {
  const Trait& known = rules_.traits[trait];
  if (const auto* derived = std::get_if<DerivedKind>(&known.kind)) {
    return has_sides(parsed(derived->formula));
  }
  return heelrule::has_sides(known.per);
}

bool NaiveReading::has_sides(const Syntax& syntax) const {
  if (syntax.form == Form::name) {
    const auto trait = rules_.find_trait(syntax.name);
    return trait && has_sides(*trait);
  }
  if (syntax.form == Form::call && is_function_of_sides(syntax.name)) {
    return false;
  }
  return std::any_of(syntax.parts.begin(), syntax.parts.end(),
                     [&](const Syntax& part) { return has_sides(part); });
}

// The trait that names the levels of a value; nothing for numbers and answers.
std::optional<std::size_t> NaiveReading::scale_of(const Syntax& syntax) const {
  if (syntax.form == Form::choose) {
    return scale_of(syntax.parts[1]);
  }
  if (syntax.form == Form::call && is_function_of_sides(syntax.name)) {
    return scale_of(syntax.parts[0]);
  }
  if (syntax.form != Form::name) {
    return std::nullopt;
  }
  const auto trait = rules_.find_trait(syntax.name);
  if (!trait) {
    return std::nullopt;
  }
  const TraitKind& kind = rules_.traits[*trait].kind;
  if (const auto* derived = std::get_if<DerivedKind>(&kind)) {
    return scale_of(parsed(derived->formula));
  }
  return levels_of(kind).empty() ? std::nullopt : trait;
}

NaiveValue NaiveReading::trait(std::size_t index, Side side) const {
  const auto* derived = std::get_if<DerivedKind>(&rules_.traits[index].kind);
  if (derived == nullptr) {
    return recorded(index, side);
  }
  const NaiveValue value = value_of(parsed(derived->formula), side);
  return value ? NaiveValue(value->settled()) : std::nullopt;
}

NaiveValue NaiveReading::formula(const Located<std::string>& text) const {
  return value_of(parsed(text), Side::none);
}

NaiveValue NaiveReading::recorded(std::size_t index, Side side) const {
  for (const Observation& observation : inspection_.observations) {
    if (observation.trait != index || observation.side != side) {
      continue;
    }
    if (const auto* readings = std::get_if<Readings>(&observation.value)) {
      Fraction sum;
      for (const double reading : readings->stored) {
        sum = sum + Fraction::of(reading);
      }
      const auto count = static_cast<std::int64_t>(readings->stored.size());
      return (sum / Fraction(count)).settled();
    }
    if (const auto* level = std::get_if<LevelSeen>(&observation.value)) {
      return Fraction(static_cast<std::int64_t>(level->level));
    }
    if (const auto* answer = std::get_if<Answer>(&observation.value)) {
      return yes_or_no(answer->yes);
    }
  }
  return std::nullopt;
}

NaiveValue NaiveReading::value_of(const Syntax& syntax, Side side) const {
  const auto part = [&](std::size_t i) { return value_of(syntax.parts[i], side); };
  switch (syntax.form) {
    case Form::value:
      return Fraction::of(syntax.value.stored);
    case Form::yes:
    case Form::no:
      return yes_or_no(syntax.form == Form::yes);
    case Form::name: {
      const auto index = rules_.find_trait(syntax.name);
      return trait(*index, has_sides(*index) ? side : Side::none);
    }
    case Form::negate: {
      const NaiveValue a = part(0);
      return a ? NaiveValue(-*a) : std::nullopt;
    }
    case Form::add:
    case Form::subtract:
    case Form::multiply:
    case Form::divide: {
      const NaiveValue a = part(0);
      const NaiveValue b = part(1);
      if (!a || !b || (syntax.form == Form::divide && b->settled() == 0)) {
        return std::nullopt;
      }
      return syntax.form == Form::add        ? *a + *b
             : syntax.form == Form::subtract ? *a - *b
             : syntax.form == Form::multiply ? *a * *b
                                             : *a / *b;
    }
    case Form::logical_not:
    case Form::logical_and:
    case Form::logical_or:
      return logic(syntax, side);
    case Form::choose: {
      const NaiveValue condition = part(0);
      const NaiveValue a = part(1);
      const NaiveValue b = part(2);
      if (condition) {
        return *condition == 1 ? a : b;
      }
      return a && b && a->settled() == b->settled() ? a : std::nullopt;
    }
    case Form::call:
      return called(syntax, side);
    default:
      return compared(syntax, side);
  }
}

NaiveValue NaiveReading::compared(const Syntax& syntax, Side side) const {
  NaiveValue a = value_of(syntax.parts[0], side);
  NaiveValue b;
  const auto scale = scale_of(syntax.parts[0]);
  const Syntax& second = syntax.parts[1];
  bool is_level = false;
  if (scale && (second.form == Form::name || second.form == Form::quoted)) {
    const std::vector<Level>& levels = levels_of(rules_.traits[*scale].kind);
    for (std::size_t i = 0; i < levels.size(); ++i) {
      if (levels[i].name.value == second.name) {
        b = Fraction(static_cast<std::int64_t>(i));
        is_level = true;
      }
    }
  }
  if (!is_level) {
    b = value_of(second, side);
  }
  if (!a || !b) {
    return std::nullopt;
  }
  a = a->settled();
  b = b->settled();
  switch (syntax.form) {
    case Form::less:
      return yes_or_no(*a < *b);
    case Form::at_most:
      return yes_or_no(*a <= *b);
    case Form::more:
      return yes_or_no(*a > *b);
    case Form::at_least:
      return yes_or_no(*a >= *b);
    case Form::is:
      return yes_or_no(*a == *b);
    case Form::is_not:
      return yes_or_no(*a != *b);
    default:
      throw std::logic_error("a part of a formula that no formula has");
  }
}

// Tries both answers for whatever was not seen: decided is what comes out the same for each.
NaiveValue NaiveReading::logic(const Syntax& syntax, Side side) const {
  std::vector<NaiveValue> seen;
  for (const Syntax& part : syntax.parts) {
    seen.push_back(value_of(part, side));
  }
  bool can_be_yes = false;
  bool can_be_no = false;
  for (const bool first : {false, true}) {
    for (const bool second : {false, true}) {
      const bool possible = (!seen[0] || (*seen[0] == 1) == first) &&
                            (seen.size() < 2 || !seen[1] || (*seen[1] == 1) == second);
      const bool yes = syntax.form == Form::logical_not   ? !first
                       : syntax.form == Form::logical_and ? first && second
                                                          : first || second;
      can_be_yes = can_be_yes || (possible && yes);
      can_be_no = can_be_no || (possible && !yes);
    }
  }
  return can_be_yes && can_be_no ? std::nullopt : yes_or_no(can_be_yes);
}

}  // namespace heelrule
